using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Drafting;

/// <summary>Gives edges of a drafted outline their allowances by where they start, so that nobody has to count letters.</summary>
internal static class EdgeRoles
{
    /// <summary>The allowances by letter. Edges that start elsewhere take the piece's own allowance.</summary>
    public static ImmutableArray<EdgeAllowance> Of(ImmutableArray<OutlineVertex> outline, ImmutableArray<(Point Start, Length Width)> roles)
    {
        List<EdgeAllowance> allowances = [];
        foreach (OutlineEdge edge in SeamOutline.Of(outline, [])?.Edges ?? [])
        {
            foreach ((Point start, Length width) in roles)
            {
                if ((edge.Points[0] - start).NormMicrometers < 10)
                    allowances.Add(new EdgeAllowance(edge.From, edge.To, width, AllowanceEnds.Mitred));
            }
        }
        return [.. allowances];
    }

    /// <summary>Extent of the cutting line across the grain, or <c>null</c> when no piece comes out of it.</summary>
    public static Length? DepthOf(DraftedShape shape, Length seam)
    {
        PieceResult result = PieceMaking.Make(new PieceDraft
        {
            Name = "draft",
            Size = "",
            Outline = shape.Outline,
            Meaning = OutlineMeaning.SeamLine,
            Cut = shape.Cut,
            Seam = seam,
            Edges = shape.Edges,
            PointLimitRatio = 2.5,
            Grainline = null,
            FoldLine = shape.FoldLine,
            FoldEdge = "",
            Notches = [],
            Lines = [],
            Marks = [],
            Grain = GrainRule.Along,
            Tilt = null,
        });
        return result.Piece is { } piece ? Length.FromMicrometers(piece.CuttingLine.Bounds.Height) : null;
    }

    /// <summary>A corner of an outline, marked so that it stays one however slight it is.</summary>
    public static OutlineVertex Corner(double xMillimeters, double yMillimeters) => new(Point.FromMillimeters(xMillimeters, yMillimeters), VertexKind.Marked);
}
