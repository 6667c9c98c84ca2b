namespace Nestmark.Output.Drawings;

/// <summary>An upright rectangle on a picture, in millimeters.</summary>
internal readonly record struct Area(double LeftMillimeters, double BottomMillimeters, double RightMillimeters, double TopMillimeters)
{
    /// <summary>Extent along x.</summary>
    public double WidthMillimeters => RightMillimeters - LeftMillimeters;

    /// <summary>Extent along y.</summary>
    public double HeightMillimeters => TopMillimeters - BottomMillimeters;

    /// <summary>Its middle.</summary>
    public Spot Center => new((LeftMillimeters + RightMillimeters) / 2, (BottomMillimeters + TopMillimeters) / 2);

    /// <summary>Its corners, counter-clockwise from the lowest left one.</summary>
    public Spot[] Corners =>
    [
        new(LeftMillimeters, BottomMillimeters), new(RightMillimeters, BottomMillimeters),
        new(RightMillimeters, TopMillimeters), new(LeftMillimeters, TopMillimeters),
    ];

    /// <summary>The smallest area around some places; one or more.</summary>
    public static Area Around(IEnumerable<Spot> spots)
    {
        Area area = new(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (Spot spot in spots)
            area = area.Including(new Area(spot.XMillimeters, spot.YMillimeters, spot.XMillimeters, spot.YMillimeters));
        return area;
    }

    /// <summary>This area, grown to hold another.</summary>
    public Area Including(Area other) => new(
        Math.Min(LeftMillimeters, other.LeftMillimeters), Math.Min(BottomMillimeters, other.BottomMillimeters),
        Math.Max(RightMillimeters, other.RightMillimeters), Math.Max(TopMillimeters, other.TopMillimeters));

    /// <summary>This area with every side moved outward, or inward below zero.</summary>
    public Area Grown(double byMillimeters) => new(
        LeftMillimeters - byMillimeters, BottomMillimeters - byMillimeters, RightMillimeters + byMillimeters, TopMillimeters + byMillimeters);

    /// <summary>This area, moved.</summary>
    public Area Moved(double xMillimeters, double yMillimeters) => new(
        LeftMillimeters + xMillimeters, BottomMillimeters + yMillimeters, RightMillimeters + xMillimeters, TopMillimeters + yMillimeters);

    /// <summary>The part common with another; upside down where there is none.</summary>
    public Area Common(Area other) => new(
        Math.Max(LeftMillimeters, other.LeftMillimeters), Math.Max(BottomMillimeters, other.BottomMillimeters),
        Math.Min(RightMillimeters, other.RightMillimeters), Math.Min(TopMillimeters, other.TopMillimeters));

    /// <summary>Whether two areas meet, touching included.</summary>
    public bool Touches(Area other) =>
        LeftMillimeters <= other.RightMillimeters && other.LeftMillimeters <= RightMillimeters
        && BottomMillimeters <= other.TopMillimeters && other.BottomMillimeters <= TopMillimeters;

    /// <summary>How far a place is from it; 0 inside.</summary>
    public double DistanceMillimeters(Spot spot)
    {
        double x = Math.Max(0, Math.Max(LeftMillimeters - spot.XMillimeters, spot.XMillimeters - RightMillimeters));
        double y = Math.Max(0, Math.Max(BottomMillimeters - spot.YMillimeters, spot.YMillimeters - TopMillimeters));
        return Math.Sqrt(x * x + y * y);
    }

    /// <summary>Whether a place lies inside or on the edge.</summary>
    public bool Holds(Spot spot) =>
        spot.XMillimeters >= LeftMillimeters && spot.XMillimeters <= RightMillimeters
        && spot.YMillimeters >= BottomMillimeters && spot.YMillimeters <= TopMillimeters;
}
