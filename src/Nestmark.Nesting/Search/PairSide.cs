using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>The no-fit polygon of a still and a moving shape, as the moving one sees it.</summary>
/// <remarks>One polygon serves both orders of a pair: seen from the other side it is turned half round.</remarks>
internal sealed class PairSide
{
    /// <summary>Single precision at 16 m along the lay; boxes are widened by it.</summary>
    private const double BoxMargin = 2;

    private readonly Func<PairFit> _make;
    private PairFit? _fit;

    /// <summary>Takes one side of a pair.</summary>
    /// <param name="make">Gives the no-fit polygon, the same whenever it is asked.</param>
    /// <param name="room">Where that polygon lies.</param>
    /// <param name="isTurned">Whether it is made with the shapes the other way round.</param>
    /// <param name="size">Mean size of the two shapes, the mean of all being 1.</param>
    public PairSide(Func<PairFit> make, FitRoom room, bool isTurned, double size)
    {
        _make = make;
        Sign = isTurned ? -1 : 1;
        MinX = (float)((isTurned ? -room.MaxX : room.MinX) - BoxMargin);
        MaxX = (float)((isTurned ? -room.MinX : room.MaxX) + BoxMargin);
        MinY = (float)((isTurned ? -room.MaxY : room.MinY) - BoxMargin);
        MaxY = (float)((isTurned ? -room.MinY : room.MaxY) + BoxMargin);
        Scale = (float)(size * Math.Sqrt(size));
    }

    /// <summary>The no-fit polygon, made when first asked for: most pairs of a long lay never come near each other.</summary>
    public PairFit Fit => _fit ??= _make();

    /// <summary>-1 when the polygon is turned half round, otherwise 1.</summary>
    public double Sign { get; }

    /// <summary>Bounds relative to the still shape, a little wider than the polygon.</summary>
    public float MinX { get; }

    /// <summary>As <see cref="MinX"/>.</summary>
    public float MaxX { get; }

    /// <summary>As <see cref="MinX"/>.</summary>
    public float MinY { get; }

    /// <summary>As <see cref="MinX"/>.</summary>
    public float MaxY { get; }

    /// <summary>Factor on the root of the depth that makes it a severity.</summary>
    public float Scale { get; }
}
