using Nestmark.Cloths;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;

namespace Nestmark.Output.Lays;

/// <summary>The grainline of a placement: heads at both ends where either way up will do, one head where the cloth has a nap.</summary>
/// <remarks>Trade reference 4.3 [NIMI p.32].</remarks>
internal static class GrainArrow
{
    /// <summary>Draws it.</summary>
    public static void Draw(Drawing drawing, Frame frame, Placement placement, Nap nap, Ink ink, double headMillimeters)
    {
        Spot start = frame.Of(placement.Map(placement.Piece.Grainline.Start));
        Spot end = frame.Of(placement.Map(placement.Piece.Grainline.End));
        double length = start.DistanceMillimeters(end);
        if (length == 0)
            return;
        double head = Math.Min(headMillimeters, length / 3);
        Spot lineStart = nap == Nap.None ? start.Toward(end, head / length) : start;
        drawing.Line(Role.Grainline, ink, lineStart, end.Toward(start, head / length));
        ArrowHead.Draw(drawing, Role.Grainline, start, end, head);
        if (nap == Nap.None)
            ArrowHead.Draw(drawing, Role.Grainline, end, start, head);
    }
}
