using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Output.Drawings;

/// <summary>Where the lay lies on a picture: scaled, then moved.</summary>
/// <param name="ScaleRatio">Millimeters on the picture for one millimeter of cloth.</param>
/// <param name="Origin">Where the lay's origin lies on the picture.</param>
internal readonly record struct Frame(double ScaleRatio, Spot Origin)
{
    /// <summary>True size, in place.</summary>
    public static Frame TrueSize => new(1, default);

    /// <summary>Where a point of the lay lies on the picture.</summary>
    public Spot Of(Point point) => Of(point.XMillimeters, point.YMillimeters);

    /// <summary>Where a place on the lay, in millimeters, lies on the picture.</summary>
    public Spot Of(double xMillimeters, double yMillimeters) =>
        new(Origin.XMillimeters + xMillimeters * ScaleRatio, Origin.YMillimeters + yMillimeters * ScaleRatio);

    /// <summary>Where the rings of a polygon lie on the picture, the outer one first.</summary>
    public ImmutableArray<ImmutableArray<Spot>> Of(Polygon polygon)
    {
        Frame frame = this;
        return [[.. polygon.Outer.Select(frame.Of)], .. polygon.Holes.Select(hole => hole.Select(frame.Of).ToImmutableArray())];
    }
}
