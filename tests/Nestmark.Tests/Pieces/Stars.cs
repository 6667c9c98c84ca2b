using System.Collections.Immutable;
using CsCheck;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

/// <summary>Random drafts: star-shaped outlines, so always simple, with random vertex kinds, widths and ends. Invented.</summary>
internal static class Stars
{
    /// <summary>One width all around, mitred, limit 1.2 to 5.</summary>
    public static Gen<PieceDraft> Uniform { get; } =
        Gen.Select(Outline(3, 14), Gen.Int[1, 30], Gen.Double[1.2, 5], (outline, seam, limit) => Drafts.Of(outline, seam) with { PointLimitRatio = limit });

    /// <summary>A width of its own for every edge, zero among them, mitred, limit 1 to 4.</summary>
    public static Gen<PieceDraft> Mitred { get; } =
        Gen.Select(Outline(3, 14), Widths, Gen.Double[1, 4], (outline, widths, limit) => WithEdges(outline, widths, [AllowanceEnds.Mitred], limit));

    /// <summary>Any width and any end for every edge.</summary>
    public static Gen<PieceDraft> Any { get; } =
        Gen.Select(Outline(3, 14), Widths, Gen.Enum<AllowanceEnds>().Array[14], Gen.Double[1, 4], WithEdges);

    private static Gen<int[]> Widths => Gen.OneOf(Gen.Const(0), Gen.Const(10), Gen.Const(10), Gen.Int[1, 60]).Array[14];

    private static Gen<OutlineVertex[]> Outline(int fewest, int most) =>
        Gen.Select(Gen.Int[0, 200], Gen.Int[0, 7]).Array[fewest, most].Select(spokes => Outline(spokes));

    private static OutlineVertex[] Outline((int Reach, int Kind)[] spokes) => [.. spokes.Select((spoke, i) =>
    {
        Angle direction = Angle.FromDegrees(360.0 * i / spokes.Length + spoke.Kind);
        double reach = 60 + spoke.Reach;
        return new OutlineVertex(
            Point.FromMillimeters(reach * direction.CosineRatio, reach * direction.SineRatio),
            spoke.Kind == 0 ? VertexKind.Curve : spoke.Kind == 1 ? VertexKind.Marked : VertexKind.Joint);
    })];

    private static PieceDraft WithEdges(OutlineVertex[] outline, int[] widths, AllowanceEnds[] ends, double limit)
    {
        PieceDraft bare = Drafts.Of(outline);
        ImmutableArray<EdgeAllowance> edges = [.. bare.Made().Edges.Select((edge, i) =>
            new EdgeAllowance(edge.From, edge.To, Length.FromMillimeters(widths[i]), ends[i % ends.Length]))];
        return bare with { Edges = edges, PointLimitRatio = limit };
    }
}
