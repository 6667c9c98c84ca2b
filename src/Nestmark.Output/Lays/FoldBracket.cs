using Nestmark.Output.Drawings;
using Nestmark.Nesting;
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
        (Spot left, Spot right) = one.XMillimeters <= other.XMillimeters ? (one, other) : (other, one);
        double inset = Math.Min(2 * depthMillimeters, left.DistanceMillimeters(right) / 4);
        Spot leftFoot = left.Moved(inset, 0);
        Spot rightFoot = right.Moved(-inset, 0);
        Spot leftTop = leftFoot.Moved(0, depthMillimeters);
        Spot rightTop = rightFoot.Moved(0, depthMillimeters);
        drawing.Line(Role.FoldEdge, ink, leftFoot.Moved(0, depthMillimeters / 2), leftTop, rightTop, rightFoot.Moved(0, depthMillimeters / 2));
        ArrowHead.Draw(drawing, Role.FoldEdge, leftTop, leftFoot, depthMillimeters * 0.6);
        ArrowHead.Draw(drawing, Role.FoldEdge, rightTop, rightFoot, depthMillimeters * 0.6);
        return leftTop.Toward(rightTop, 0.5);
    }
}
