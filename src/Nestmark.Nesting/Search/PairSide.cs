using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>The no-fit polygon of a still and a moving shape, as the moving one sees it.</summary>
/// <remarks>One polygon serves both orders of a pair: seen from the other side it is turned half round.</remarks>
internal sealed class PairSide
{
    /// <summary>Single precision at 16 m along the lay; boxes are widened by it.</summary>
    private const double BoxMargin = 2;

    private readonly PairFits _fits;
    private readonly int _first;
    private readonly int _second;
    private PairFit? _fit;
    private OverlapMap? _map;

    /// <summary>Takes one side of a pair.</summary>
    /// <param name="fits">Makes the no-fit polygon.</param>
    /// <param name="still">Index of the still shape.</param>
    /// <param name="moving">Index of the moving one.</param>
    /// <param name="scale">Factor on the severity of their overlaps.</param>
    public PairSide(PairFits fits, int still, int moving, double scale)
    {
        _fits = fits;
        bool isTurned = still > moving;
        (_first, _second) = isTurned ? (moving, still) : (still, moving);
        FitRoom room = fits.RoomOf(_first, _second);
        Sign = isTurned ? -1 : 1;
        MinX = (float)((isTurned ? -room.MaxX : room.MinX) - BoxMargin);
        MaxX = (float)((isTurned ? -room.MinX : room.MaxX) + BoxMargin);
        MinY = (float)((isTurned ? -room.MaxY : room.MinY) - BoxMargin);
        MaxY = (float)((isTurned ? -room.MinY : room.MaxY) + BoxMargin);
        Scale = (float)scale;
    }

    /// <summary>The no-fit polygon, made when first asked for: most pairs of a long lay never come near each other.</summary>
    public PairFit Fit => _fit ??= _fits.Of(_first, _second);

    /// <summary>How severely they overlap, made when first asked for.</summary>
    public OverlapMap Map => _map ??= _fits.MapOf(_first, _second);

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

    /// <summary>Factor on what <see cref="Map"/> says.</summary>
    public float Scale { get; }
}
