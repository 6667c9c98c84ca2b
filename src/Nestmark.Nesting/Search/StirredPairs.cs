using System.Numerics;

namespace Nestmark.Nesting.Search;

/// <summary>Goes through the pairs that do not rest in one of two tables of as many items, item by item.</summary>
internal struct StirredPairs(PairTable first, PairTable second)
{
    private int _item = -1;
    private int _word = int.MaxValue - 1;
    private ulong _left;

    public readonly ItemPair Current => new(_item, 64 * _word + BitOperations.TrailingZeroCount(_left));

    public readonly StirredPairs GetEnumerator() => this;

    public bool MoveNext()
    {
        _left &= _left - 1;
        while (_left == 0)
        {
            if (++_word >= (first.Count + 63) / 64)
            {
                if (++_item >= first.Count)
                    return false;
                _word = _item / 64;
            }
            _left = (first.StirredOf(_item)[_word] | second.StirredOf(_item)[_word]) & Later();
        }
        return true;
    }

    /// <summary>Others in the present word that come after the item.</summary>
    private readonly ulong Later() => _word == _item / 64 ? ulong.MaxValue << (_item & 63) << 1 : ulong.MaxValue;
}
