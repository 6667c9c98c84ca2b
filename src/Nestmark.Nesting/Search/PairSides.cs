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

    private void Make(int index, int still, int moving)
    {
        bool isTurned = still > moving;
        (int first, int second) = isTurned ? (moving, still) : (still, moving);
        double size = (shapes[still].SizeMicrometers + shapes[moving].SizeMicrometers) / (2 * _meanSize);
        Interlocked.CompareExchange(ref _sides[index], new PairSide(() => fits.Of(first, second), fits.RoomOf(first, second), isTurned, size), null);
    }
}
