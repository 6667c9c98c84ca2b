using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Svg;

/// <summary>One run of drawn segments, head to tail.</summary>
/// <param name="Segments">One or more.</param>
/// <param name="Form">Whether the author closed it.</param>
internal sealed record SubPath(ImmutableArray<CurveSegment> Segments, SubPathForm Form)
{
    public CurvePoint Start => Segments[0].Start;

    public CurvePoint End => Segments[^1].End;

    /// <summary>Distance from its end back to its start.</summary>
    public double GapMillimeters => (End - Start).NormMillimeters;

    public SubPath Mapped(AffineMap map) => new([.. Segments.Select(segment => segment.Mapped(map))], Form);
}
