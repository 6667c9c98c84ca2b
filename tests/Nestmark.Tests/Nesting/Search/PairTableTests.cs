using CsCheck;
using Nestmark.Nesting.Search;

namespace Nestmark.Tests.Nesting.Search;

public sealed class PairTableTests
{
    private static readonly Gen<(int Count, (int Item, int Other, int Value)[] Changes)> Histories =
        from count in Gen.Int[2, 140]
        from changes in Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1], Gen.Int[0, 3]).Array[0, 60]
        select (count, changes);

    // Judge: a plain square of numbers, gone through from end to end. Value 3 lets all pairs of the item rest.
    [Fact]
    public void It_says_what_a_plain_square_of_numbers_says() => Histories.Check(200, history =>
    {
        PairTable table = new(history.Count, 1);
        float[,] plain = new float[history.Count, history.Count];
        for (int i = 0; i < history.Count; i++)
        {
            for (int j = 0; j < history.Count; j++)
                plain[i, j] = 1;
        }
        foreach ((int item, int other, int value) in history.Changes)
        {
            if (value == 3)
            {
                table.Settle(item);
                for (int i = 0; i < history.Count; i++)
                    plain[item, i] = plain[i, item] = 1;
            }
            else if (item != other)
            {
                table.Set(item, other, value);
                plain[item, other] = plain[other, item] = value;
            }
        }
        Assert.Equal(Stirred(plain), Listed(table));
        Assert.Equal(Stirred(plain).Sum(pair => plain[pair.Item, pair.Other]), table.Total());
        Assert.Equal(Stirred(plain).Select(pair => plain[pair.Item, pair.Other]).Append(1).Max(), table.Greatest());
        PairTable copy = new(history.Count, 1);
        copy.Set(0, history.Count - 1, 5);
        copy.Take(table);
        for (int i = 0; i < history.Count; i++)
        {
            Assert.Equal(Enumerable.Range(0, history.Count).Any(j => plain[i, j] != 1), table.IsStirred(i));
            for (int j = 0; j < history.Count; j++)
                Assert.Equal((plain[i, j], plain[i, j]), (table[i, j], copy[i, j]));
        }
    });

    [Fact]
    public void Two_tables_are_gone_through_together()
    {
        PairTable first = new(100, 0);
        PairTable second = new(100, 1);
        first.Set(99, 3, 2);
        first.Set(3, 64, 1);
        second.Set(64, 3, 7);
        second.Set(0, 1, 0);
        List<(int, int)> pairs = [];
        foreach (ItemPair pair in first.StirredWith(second))
            pairs.Add((pair.Item, pair.Other));
        Assert.Equal([(0, 1), (3, 64), (3, 99)], pairs);
    }

    private static ItemPair[] Listed(PairTable table)
    {
        List<ItemPair> pairs = [];
        foreach (ItemPair pair in table.Stirred())
            pairs.Add(pair);
        return [.. pairs];
    }

    private static ItemPair[] Stirred(float[,] plain)
    {
        int count = plain.GetLength(0);
        return
        [
            .. from item in Enumerable.Range(0, count)
               from other in Enumerable.Range(item + 1, count - item - 1)
               where plain[item, other] != 1
               select new ItemPair(item, other),
        ];
    }
}
