using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.Lays;

/// <summary>The cloth around the lay: from cut end to cut end, from fold or edge to edge, in millimeters of the lay.</summary>
internal static class ClothFrame
{
    /// <summary>The rectangle of cloth, washed, with selvages and ends.</summary>
    public static Area Of(ClothPlan cloth)
    {
        double ends = cloth.Cloth.Ends.TotalMillimeters;
        double selvage = cloth.Cloth.Selvage.TotalMillimeters;
        return new Area(
            -ends, cloth.Marker.Surface.HasNearFold ? 0 : -selvage,
            cloth.Marker.LayLength.TotalMillimeters + ends, cloth.Marker.Surface.Depth.TotalMillimeters + selvage);
    }

    /// <summary>Draws edges, fold, selvages and cut ends.</summary>
    /// <param name="drawing">Gets the lines.</param>
    /// <param name="frame">Where the lay lies.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="lineMillimeters">Width of a plain line on the picture.</param>
    public static void Draw(Drawing drawing, Frame frame, ClothPlan cloth, double lineMillimeters)
    {
        Area area = Of(cloth);
        Spot[] corners = [.. area.Corners.Select(corner => frame.Of(corner.XMillimeters, corner.YMillimeters))];
        Ink edge = new(lineMillimeters, LineStyle.Solid, 0.35);
        Ink selvage = new(lineMillimeters * 0.7, LineStyle.Dotted, 0.35);
        drawing.Line(Role.ClothEdge, edge, corners[1], corners[2], corners[3], corners[0]);
        DrawSelvage(drawing, frame, area, cloth.Marker.Surface.Depth.TotalMillimeters, selvage);
        if (cloth.Marker.Surface.HasNearFold)
        {
            drawing.Line(Role.Fold, new Ink(lineMillimeters * 2.5, LineStyle.DashDot), corners[0], corners[1]);
            return;
        }
        drawing.Line(Role.ClothEdge, edge, corners[0], corners[1]);
        DrawSelvage(drawing, frame, area, 0, selvage);
    }

    private static void DrawSelvage(Drawing drawing, Frame frame, Area area, double yMillimeters, Ink ink)
    {
        if (yMillimeters > area.BottomMillimeters && yMillimeters < area.TopMillimeters)
            drawing.Line(Role.Selvage, ink, frame.Of(area.LeftMillimeters, yMillimeters), frame.Of(area.RightMillimeters, yMillimeters));
    }
}
