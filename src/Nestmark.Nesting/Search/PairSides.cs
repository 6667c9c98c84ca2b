using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Both sides of all pairs of shapes, each made when first asked for. Safe for several threads.</summary>
internal sealed class PairSides(SearchShape[] shapes, PairFits fits)
{
    private readonly PairSide?[] _sides = new PairSide?[shapes.Length * shapes.Length];
    private readonly double _meanSize = shapes.Average(shape => shape.SizeMicrometers);

    /// <summary>Index of a pair, for <see cref="this"/>; makes the pair if it is new.</summary>
    public int IndexOf(int still, int moving)
    {
        int index = moving * shapes.Length + still;
        if (Volatile.Read(ref _sides[index]) is null)
            Make(index, still, moving);
        return index;
    }

    /// <summary>The pair of an index that <see cref="IndexOf"/> gave.</summary>
    public PairSide this[int index] => _sides[index]!;

    /// <summary>Overlaps of larger shapes count more, since they are the hardest to remove.</summary>
    private void Make(int index, int still, int moving)
    {
        double size = Math.Sqrt(shapes[still].SizeMicrometers * shapes[moving].SizeMicrometers) / _meanSize;
        Interlocked.CompareExchange(ref _sides[index], new PairSide(fits, still, moving, size), null);
    }
}
