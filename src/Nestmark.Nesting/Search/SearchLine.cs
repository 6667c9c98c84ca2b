namespace Nestmark.Nesting.Search;

/// <summary>A stretch of a line through a place.</summary>
/// <param name="X">The place, micrometers.</param>
/// <param name="Y">As <paramref name="X"/>.</param>
/// <param name="AlongX">Direction, a unit vector.</param>
/// <param name="AlongY">As <paramref name="AlongX"/>.</param>
/// <param name="Low">Where the stretch begins: distance along the line, 0 or less.</param>
/// <param name="High">Where it ends: 0 or more.</param>
internal readonly record struct SearchLine(double X, double Y, double AlongX, double AlongY, double Low, double High)
{
    /// <summary>Least and greatest coordinate of the stretch.</summary>
    public (double From, double To) Extent(double origin, double along) =>
        along >= 0 ? (origin + Low * along, origin + High * along) : (origin + High * along, origin + Low * along);

    /// <summary>The stretch that also lies between two bounds of one coordinate.</summary>
    public SearchLine Within(double origin, double along, double low, double high)
    {
        if (Math.Abs(along) < 1e-9)
            return this;
        double first = (low - origin) / along;
        double second = (high - origin) / along;
        return this with { Low = Math.Min(0, Math.Max(Low, Math.Min(first, second))), High = Math.Max(0, Math.Min(High, Math.Max(first, second))) };
    }
}
