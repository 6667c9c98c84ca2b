namespace Nestmark.Output.Drawings;

/// <summary>A place on a picture in millimeters: x to the right, y up. <c>default</c> is the origin.</summary>
internal readonly record struct Spot(double XMillimeters, double YMillimeters)
{
    /// <summary>This place, moved.</summary>
    public Spot Moved(double xMillimeters, double yMillimeters) => new(XMillimeters + xMillimeters, YMillimeters + yMillimeters);

    /// <summary>The place a part of the way to another, 0 here to 1 there.</summary>
    public Spot Toward(Spot other, double ratio) =>
        new(XMillimeters + (other.XMillimeters - XMillimeters) * ratio, YMillimeters + (other.YMillimeters - YMillimeters) * ratio);

    /// <summary>The distance to another place.</summary>
    public double DistanceMillimeters(Spot other)
    {
        double x = other.XMillimeters - XMillimeters;
        double y = other.YMillimeters - YMillimeters;
        return Math.Sqrt(x * x + y * y);
    }
}
