using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Pieces;

namespace Nestmark.Output.Lays;

/// <summary>The bracket along the fold edge of a placement: its arrows point to the edge that lies on the fold.</summary>
/// <remarks>Trade reference 4.3 [SKUO], [AFQ].</remarks>
internal static class FoldBracket
{
    /// <summary>Draws it for a placement on the fold, and nothing for another.</summary>
    /// <param name="drawing">Gets it.</param>
    /// <param name="frame">Where the lay lies.</param>
    /// <param name="placement">The placement.</param>
    /// <param name="ink">Its line.</param>
    /// <param name="depthMillimeters">How far inside the edge the bracket runs.</param>
    /// <returns>Where text about the fold may stand, above the middle of the bracket; <c>null</c> when nothing was drawn.</returns>
    public static Spot? Draw(Drawing drawing, Frame frame, Placement placement, Ink ink, double depthMillimeters)
    {
        if (placement.Contact != FoldContact.OnFold || placement.Piece.FoldEdge is not Segment edge)
            return null;
        Spot one = frame.Of(placement.Map(edge.Start));
        Spot other = frame.Of(placement.Map(edge.End));
        Point inward = placement.Turn.Apply(new Point(0, 1));
        (Spot left, Spot right) = one.XMillimeters <= other.XMillimeters ? (one, other) : (other, one);
        double share = Math.Min(2 * depthMillimeters / Math.Max(1e-9, left.DistanceMillimeters(right)), 0.25);
        Spot leftFoot = left.Toward(right, share);
        Spot rightFoot = right.Toward(left, share);
        Spot leftTop = Inside(leftFoot, depthMillimeters);
        Spot rightTop = Inside(rightFoot, depthMillimeters);
        drawing.Line(Role.FoldEdge, ink, Inside(leftFoot, depthMillimeters / 2), leftTop, rightTop, Inside(rightFoot, depthMillimeters / 2));
        ArrowHead.Draw(drawing, Role.FoldEdge, leftTop, leftFoot, depthMillimeters * 0.6);
        ArrowHead.Draw(drawing, Role.FoldEdge, rightTop, rightFoot, depthMillimeters * 0.6);
        return leftTop.Toward(rightTop, 0.5);

        Spot Inside(Spot foot, double by) => foot.Moved(inward.X * by, inward.Y * by);
    }
}
