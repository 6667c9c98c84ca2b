namespace Nestmark.Nesting.NoFit;

/// <summary>The no-fit polygon of a still and a moving shape as a pair sees it.</summary>
/// <param name="Fit">Shared with the other order of the pair and all its mirror images.</param>
/// <param name="Seen">How a place of the moving shape, seen from the still one, is to be mirrored before <paramref name="Fit"/> is asked, and what it says after.</param>
internal readonly record struct SeenFit(PairFit Fit, Mirroring Seen)
{
    /// <summary>Whether a place lies inside the region.</summary>
    public bool Contains(double x, double y) => Fit.Contains(Seen.SignX * x, Seen.SignY * y);

    /// <summary>As <see cref="PairFit.Cross"/>.</summary>
    public int Cross(double x, double y, double alongX, double alongY, Span<LineCrossing> crossings) =>
        Fit.Cross(Seen.SignX * x, Seen.SignY * y, Seen.SignX * alongX, Seen.SignY * alongY, crossings);

    /// <summary>As <see cref="PairFit.DirectionOf"/>.</summary>
    public (double X, double Y) DirectionOf(int edge)
    {
        (double x, double y) = Fit.DirectionOf(edge);
        return (Seen.SignX * x, Seen.SignY * y);
    }

    /// <summary>Lowest and highest place across the lay.</summary>
    public (double Low, double High) Upright => Seen.SignY > 0 ? (Fit.MinY, Fit.MaxY) : (-Fit.MaxY, -Fit.MinY);
}
