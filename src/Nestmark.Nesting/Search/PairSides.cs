using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Both sides of all pairs of shapes, each made when first asked for. Safe for several threads.</summary>
internal sealed class PairSides(SearchShape[] shapes, PairFits fits)
{
    /// <summary>Single precision at 16 m along the lay; rooms are widened by it.</summary>
    private const double RoomMargin = 2;

    private readonly PairSide?[] _sides = new PairSide?[shapes.Length * shapes.Length];
    private readonly double _meanSize = shapes.Average(shape => shape.SizeMicrometers);

    /// <summary>Index of a pair, for <see cref="this"/>.</summary>
    public int IndexOf(int still, int moving) => moving * shapes.Length + still;

    /// <summary>The pair of an index that <see cref="IndexOf"/> gave; made if it is new.</summary>
    public PairSide this[int index] => Volatile.Read(ref _sides[index]) ?? Made(index);

    /// <summary>Bounds relative to the still shape, a little wider than the polygon; known without it, from the two shapes alone.</summary>
    public FitRoom RoomOf(int still, int moving)
    {
        FitRoom room = fits.RoomOf(still, moving);
        return new FitRoom(room.MinX - RoomMargin, room.MaxX + RoomMargin, room.MinY - RoomMargin, room.MaxY + RoomMargin);
    }

    /// <summary>Overlaps of larger shapes count more, since they are the hardest to remove.</summary>
    private PairSide Made(int index)
    {
        (int moving, int still) = Math.DivRem(index, shapes.Length);
        double size = Math.Sqrt(shapes[still].SizeMicrometers * shapes[moving].SizeMicrometers) / _meanSize;
        PairSide made = new(fits, still, moving, size);
        return Interlocked.CompareExchange(ref _sides[index], made, null) ?? made;
    }
}
