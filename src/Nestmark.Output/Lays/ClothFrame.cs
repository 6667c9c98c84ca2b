using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.Lays;

/// <summary>The cloth around the lay: from cut end to cut end, from fold or edge to edge, in millimeters of the lay.</summary>
internal static class ClothFrame
{
    /// <summary>The rectangle of cloth, washed, with selvages and ends; of leftovers the rectangle around them.</summary>
    public static Area Of(ClothPlan cloth)
    {
        LaySurface surface = cloth.Marker.Surface;
        if (cloth.Leftovers is { } table)
            return new Area(0, 0, table.Length.TotalMillimeters, surface.Depth.TotalMillimeters);
        double ends = cloth.Cloth.Ends.TotalMillimeters;
        double selvage = cloth.Cloth.Selvage.TotalMillimeters;
        return new Area(
            HasFoldAtBegin(surface) ? 0 : -ends, surface.HasNearFold ? 0 : -selvage,
            cloth.Marker.LayLength.TotalMillimeters + ends,
            surface.Depth.TotalMillimeters + (HasFarFold(surface) ? 0 : selvage));
    }

    /// <summary>Draws edges, folds, selvages, cut ends, flaws; of leftovers their outlines and names.</summary>
    /// <param name="drawing">Gets the lines.</param>
    /// <param name="frame">Where the lay lies.</param>
    /// <param name="cloth">The cloth.</param>
    /// <param name="lineMillimeters">Width of a plain line on the picture.</param>
    public static void Draw(Drawing drawing, Frame frame, ClothPlan cloth, double lineMillimeters)
    {
        Ink edge = new(lineMillimeters, LineStyle.Solid, 0.35);
        if (cloth.Leftovers is { } table)
        {
            foreach ((Remnant remnant, Point at) in table.Places)
                drawing.Add(new PathFigure(Role.ClothEdge, frame.Of(remnant.Area.Shifted(at)), PathEnds.Closed, edge, null));
            return;
        }
        DrawEdges(drawing, frame, cloth, edge);
        DrawBands(drawing, frame, cloth, new Ink(lineMillimeters * 0.7, LineStyle.Dotted, 0.35));
        foreach (LayFold fold in cloth.Marker.Surface.Folds)
            DrawFold(drawing, frame, cloth, fold, new Ink(lineMillimeters * 2.5, LineStyle.DashDot));
        foreach (Obstacle flaw in FlawsOf(cloth))
            drawing.Add(new PathFigure(Role.Flaw, frame.Of(flaw.Area), PathEnds.Closed, edge, 0.85));
    }

    /// <summary>The flaws of the cloth as they come to lie.</summary>
    public static ImmutableArray<Obstacle> FlawsOf(ClothPlan cloth) =>
        cloth.Leftovers is null && FlawPlaces.CanBeAvoidedOn(cloth.Marker.Surface.Form) ? FlawPlaces.On(cloth.Cloth, cloth.Marker.Surface) : [];

    private static bool HasFoldAtBegin(LaySurface surface) => surface.Folds.Any(fold => fold.Side == FoldSide.Begin);

    private static bool HasFarFold(LaySurface surface) => surface.Folds.Any(fold => fold.Side == FoldSide.Far);

    /// <summary>The rectangle, without the sides that are folds.</summary>
    private static void DrawEdges(Drawing drawing, Frame frame, ClothPlan cloth, Ink edge)
    {
        LaySurface surface = cloth.Marker.Surface;
        Spot[] corners = [.. Of(cloth).Corners.Select(corner => frame.Of(corner.XMillimeters, corner.YMillimeters))];
        drawing.Line(Role.ClothEdge, edge, corners[1], corners[2]);
        if (!HasFarFold(surface))
            drawing.Line(Role.ClothEdge, edge, corners[2], corners[3]);
        if (!HasFoldAtBegin(surface))
            drawing.Line(Role.ClothEdge, edge, corners[3], corners[0]);
        if (!surface.HasNearFold || surface.Form == LayForm.Mixed)
            drawing.Line(Role.ClothEdge, edge, corners[0], corners[1]);
    }

    /// <summary>Where selvages run along the lay, and where one section ends and the next begins.</summary>
    private static void DrawBands(Drawing drawing, Frame frame, ClothPlan cloth, Ink ink)
    {
        LaySurface surface = cloth.Marker.Surface;
        double end = cloth.Marker.LayLength.TotalMillimeters;
        Area area = Of(cloth);
        foreach (LayBand band in surface.Bands)
        {
            double from = band.From == Length.Zero ? area.LeftMillimeters : band.From.TotalMillimeters;
            double to = band.To?.TotalMillimeters ?? area.RightMillimeters;
            foreach (double y in (double[])[band.Low.TotalMillimeters, band.High.TotalMillimeters])
            {
                bool isInside = y > area.BottomMillimeters && y < area.TopMillimeters;
                if (isInside && !surface.Folds.Any(fold => fold.Side != FoldSide.Begin && fold.At.TotalMillimeters == y))
                    drawing.Line(Role.Selvage, ink, frame.Of(from, y), frame.Of(to, y));
            }
            if (band.To is { } split && split.TotalMillimeters < end)
                drawing.Line(Role.ClothEdge, new Ink(ink.WidthMillimeters), frame.Of(to, area.BottomMillimeters), frame.Of(to, area.TopMillimeters));
        }
    }

    private static void DrawFold(Drawing drawing, Frame frame, ClothPlan cloth, LayFold fold, Ink ink)
    {
        Area area = Of(cloth);
        LayBand band = cloth.Marker.Surface.Bands[fold.Band];
        double at = fold.At.TotalMillimeters;
        double to = band.To?.TotalMillimeters ?? area.RightMillimeters;
        if (fold.Side == FoldSide.Begin)
            drawing.Line(Role.Fold, ink, frame.Of(at, area.BottomMillimeters), frame.Of(at, area.TopMillimeters));
        else
            drawing.Line(Role.Fold, ink, frame.Of(area.LeftMillimeters, at), frame.Of(to, at));
    }
}
