using System.Numerics;

namespace Nestmark.Nesting.Search;

/// <summary>A number for each pair of items, the same in both orders, most of which rest at one value: only those that do not are gone through.</summary>
internal sealed class PairTable
{
    /// <summary>Of no items.</summary>
    public static PairTable Empty { get; } = new(0, 0);

    private readonly int _count;
    private readonly float _rest;
    private readonly float[] _values;
    private readonly ulong[] _stirred;
    private readonly int _words;

    /// <param name="count">Items.</param>
    /// <param name="rest">What every pair begins with.</param>
    public PairTable(int count, float rest)
    {
        _count = count;
        _rest = rest;
        _values = new float[count * count];
        Array.Fill(_values, rest);
        _words = (count + 63) / 64;
        _stirred = new ulong[count * _words];
    }

    /// <summary>Items.</summary>
    public int Count => _count;

    /// <summary>The number of a pair.</summary>
    public float this[int item, int other] => _values[item * _count + other];

    /// <summary>The numbers of an item with all others.</summary>
    public ReadOnlySpan<float> Row(int item) => _values.AsSpan(item * _count, _count);

    /// <summary>Whether any pair of an item does not rest.</summary>
    public bool IsStirred(int item) => StirredOf(item).ContainsAnyExcept(0UL);

    /// <summary>Sets the number of a pair.</summary>
    public void Set(int item, int other, float value)
    {
        _values[item * _count + other] = value;
        _values[other * _count + item] = value;
        Mark(item, other, value != _rest);
        Mark(other, item, value != _rest);
    }

    /// <summary>Lets all pairs of an item rest.</summary>
    public void Settle(int item)
    {
        for (int word = 0; word < _words; word++)
        {
            for (ulong left = StirredOf(item)[word]; left != 0; left &= left - 1)
                Set(item, 64 * word + BitOperations.TrailingZeroCount(left), _rest);
        }
    }

    /// <summary>Lets all pairs rest.</summary>
    public void Settle()
    {
        for (int item = 0; item < _count; item++)
            Settle(item);
    }

    /// <summary>Becomes like another table of as many items.</summary>
    public void Take(PairTable other)
    {
        Settle();
        foreach (ItemPair pair in other.Stirred())
            Set(pair.Item, pair.Other, other[pair.Item, pair.Other]);
    }

    /// <summary>A copy of its own.</summary>
    public PairTable Copy()
    {
        PairTable copy = new(_count, _rest);
        copy.Take(this);
        return copy;
    }

    /// <summary>Sum over all pairs that do not rest.</summary>
    public double Total()
    {
        double total = 0;
        foreach (ItemPair pair in Stirred())
            total += _values[pair.Item * _count + pair.Other];
        return total;
    }

    /// <summary>The greatest number of a pair, or what rests.</summary>
    public float Greatest()
    {
        float greatest = _rest;
        foreach (ItemPair pair in Stirred())
            greatest = Math.Max(greatest, _values[pair.Item * _count + pair.Other]);
        return greatest;
    }

    /// <summary>Every pair that does not rest, once; a pair may be set while it is the current one.</summary>
    public StirredPairs Stirred() => new(this, this);

    /// <summary>Every pair that does not rest in one of two tables.</summary>
    public StirredPairs StirredWith(PairTable other) => new(this, other);

    /// <summary>Which pairs of an item do not rest, 64 others a word, the first in the lowest bit.</summary>
    public ReadOnlySpan<ulong> StirredOf(int item) => _stirred.AsSpan(item * _words, _words);

    private void Mark(int item, int other, bool isStirred)
    {
        ref ulong word = ref _stirred[item * _words + other / 64];
        ulong bit = 1UL << (other & 63);
        word = isStirred ? word | bit : word & ~bit;
    }
}
