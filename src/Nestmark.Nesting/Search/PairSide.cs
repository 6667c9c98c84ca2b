using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>The no-fit polygon of a still and a moving shape, as the moving one sees it.</summary>
/// <remarks>One polygon serves both orders of a pair and all its mirror images; each sees it mirrored in its own way.</remarks>
internal sealed class PairSide
{
    private readonly PairFits _fits;
    private readonly int _still;
    private readonly int _moving;
    private PairFit? _fit;
    private OverlapMap? _map;

    /// <summary>Takes one side of a pair.</summary>
    /// <param name="fits">Makes the no-fit polygon.</param>
    /// <param name="still">Index of the still shape.</param>
    /// <param name="moving">Index of the moving one.</param>
    /// <param name="scale">Factor on the severity of their overlaps.</param>
    public PairSide(PairFits fits, int still, int moving, double scale)
    {
        (_fits, _still, _moving) = (fits, still, moving);
        Mirroring seen = fits.SeenBy(still, moving);
        (SignX, SignY) = (seen.SignX, seen.SignY);
        Scale = (float)scale;
    }

    /// <summary>The no-fit polygon, made when first asked for: most pairs of a long lay never come near each other.</summary>
    public PairFit Fit => _fit ??= _fits.Of(_still, _moving);

    /// <summary>How severely they overlap, made when first asked for.</summary>
    public OverlapMap Map => _map ??= _fits.MapOf(_still, _moving);

    /// <summary>-1 when what is asked of <see cref="Fit"/> and <see cref="Map"/> is to be mirrored along the lay, otherwise 1.</summary>
    public double SignX { get; }

    /// <summary>The same across the lay.</summary>
    public double SignY { get; }

    /// <summary>Factor on what <see cref="Map"/> says.</summary>
    public float Scale { get; }
}
