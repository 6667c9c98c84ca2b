using System.Collections.Immutable;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>Polylines of both kinds, with bulges.</summary>
internal static class DxfPolylines
{
    private const int ClosedFlag = 1;
    private const int SplineFlag = 4;
    private const int SpaceFlag = 8;
    private const int MeshFlags = 16 | 64;
    private const int FrameVertexFlag = 16;
    private const double SamePlace = 1e-9;

    /// <summary>An LWPOLYLINE; <c>null</c> when it draws nothing.</summary>
    public static SubPath? Light(DxfRecord record)
    {
        List<Vertex> vertices = [];
        foreach (DxfTag tag in record.Tags)
        {
            if (tag.Code == 10)
                vertices.Add(new Vertex(new CurvePoint(record.NumberOf(tag), 0), 0));
            else if (tag.Code == 20 && vertices.Count > 0)
                vertices[^1] = vertices[^1] with { Place = vertices[^1].Place with { YMillimeters = record.NumberOf(tag) } };
            else if (tag.Code == 42 && vertices.Count > 0)
                vertices[^1] = vertices[^1] with { BulgeRatio = record.NumberOf(tag) };
        }
        return Run(vertices, record);
    }

    /// <summary>A POLYLINE with its VERTEX records; <c>null</c> for meshes and lines that leave the plane.</summary>
    public static SubPath? Heavy(DxfRecord record)
    {
        int flags = record.Whole(70, 0);
        IEnumerable<DxfRecord> drawn = record.Children.Where(child => child.Type == "VERTEX");
        if ((flags & SplineFlag) != 0)
            drawn = drawn.Where(child => (child.Whole(70, 0) & FrameVertexFlag) == 0);
        List<DxfRecord> children = [.. drawn];
        bool leavesPlane = (flags & SpaceFlag) != 0 && children.Select(child => child.Number(30, 0)).Distinct().Count() > 1;
        if ((flags & MeshFlags) != 0 || leavesPlane)
            return null;
        return Run([.. children.Select(child => new Vertex(new CurvePoint(child.Needed(10), child.Needed(20)), child.Number(42, 0)))], record);
    }

    private static SubPath? Run(List<Vertex> vertices, DxfRecord record)
    {
        bool isClosed = (record.Whole(70, 0) & ClosedFlag) != 0;
        ImmutableArray<CurveSegment>.Builder segments = ImmutableArray.CreateBuilder<CurveSegment>();
        for (int i = 0; i < (isClosed ? vertices.Count : vertices.Count - 1); i++)
        {
            Vertex next = vertices[(i + 1) % vertices.Count];
            if ((next.Place - vertices[i].Place).NormMillimeters <= SamePlace)
                continue;
            CurvePoint start = segments.Count > 0 ? segments[^1].End : vertices[i].Place;
            if (DxfArcs.OfBulge(start, next.Place, vertices[i].BulgeRatio) is not CurveSegment segment)
            {
                record.NumberOf(new DxfTag(42, "a bulge above 10,000", record.Line));
                return null;
            }
            segments.Add(segment);
        }
        if (segments.Count == 0)
            return null;
        bool comesBack = (segments[^1].End - segments[0].Start).NormMillimeters <= SamePlace;
        return new SubPath(segments.ToImmutable(), isClosed || (comesBack && segments.Count > 1) ? SubPathForm.Closed : SubPathForm.Open);
    }

    private readonly record struct Vertex(CurvePoint Place, double BulgeRatio);
}
