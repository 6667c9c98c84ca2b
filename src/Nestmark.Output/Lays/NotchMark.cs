using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Pieces;

namespace Nestmark.Output.Lays;

/// <summary>A notch: a small filled triangle, its base on the cutting line, its point toward the seam line.</summary>
internal static class NotchMark
{
    /// <summary>Draws all notches of a placement.</summary>
    /// <param name="drawing">Gets them.</param>
    /// <param name="frame">Where the lay lies.</param>
    /// <param name="placement">The placement.</param>
    /// <param name="sizeMillimeters">Depth of a notch on the picture.</param>
    public static void DrawAll(Drawing drawing, Frame frame, Placement placement, double sizeMillimeters)
    {
        foreach (Notch notch in placement.Piece.Notches)
        {
            Spot foot = frame.Of(placement.Map(notch.OnCuttingLine));
            Spot seam = frame.Of(placement.Map(notch.OnSeamLine));
            if (foot.DistanceMillimeters(seam) < 1e-6)
                seam = frame.Of(placement.Map(InsideOf(placement.Piece.CuttingLine, notch.OnCuttingLine)));
            double length = foot.DistanceMillimeters(seam);
            double x = (seam.XMillimeters - foot.XMillimeters) / length * sizeMillimeters;
            double y = (seam.YMillimeters - foot.YMillimeters) / length * sizeMillimeters;
            drawing.Fill(Role.Notch, 0, foot.Moved(-y * 0.45, x * 0.45), foot.Moved(x, y), foot.Moved(y * 0.45, -x * 0.45));
        }
    }

    // Left of the nearest edge is inside: rings run counter-clockwise. 10 mm inward gives the direction.
    private static Point InsideOf(Polygon outline, Point foot)
    {
        Frame frame = Frame.TrueSize;
        int nearest = Enumerable.Range(0, outline.Outer.Length)
            .MinBy(i => ShapeTests.DistanceMillimeters(frame.Of(outline.Outer[i]), frame.Of(outline.Outer[(i + 1) % outline.Outer.Length]), frame.Of(foot)));
        Point start = outline.Outer[nearest];
        Point along = outline.Outer[(nearest + 1) % outline.Outer.Length] - start;
        double length = Math.Max(1, start.DistanceTo(start + along).Micrometers);
        return foot + new Point((long)(-along.Y / length * 10_000), (long)(along.X / length * 10_000));
    }
}
