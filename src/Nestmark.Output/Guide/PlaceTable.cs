using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Output.Lays;
using Nestmark.Yardage;

namespace Nestmark.Output.Guide;

/// <summary>Where each placement lies, so that it can be laid with a tape measure: both ends of its grainline.</summary>
/// <remarks>Trade reference 4.4: a piece is straight when both ends of its arrow lie equally far from the edge [WGEE].</remarks>
internal static class PlaceTable
{
    /// <summary>The table, one row a placement.</summary>
    public static Table Of(ClothPlan cloth, MeasureSystem system)
    {
        string across = cloth.Leftovers is not null ? "from low" : cloth.Marker.Surface.HasNearFold ? "to fold" : "to edge";
        string along = cloth.Leftovers is not null ? "from left" : HasFoldAtBegin(cloth) ? "to fold" : "to cut end";
        string unit = LengthWords.TapeUnit(system);
        ImmutableArray<TableColumn> columns =
        [
            new("", "No.", 0.05, Anchor.Start), new("", "Piece", 0.15, Anchor.Start), new("", "Size", 0.06, Anchor.Start),
            new("", "Copy", 0.08, Anchor.Start), new("", cloth.Leftovers is null ? "Cut" : "From", 0.09, Anchor.Start), new("", "Lies", 0.19, Anchor.Start),
            new($"Near end, {unit}", along, 0.11, Anchor.End), new($"Near end, {unit}", across, 0.08, Anchor.End),
            new($"Far end, {unit}", along, 0.11, Anchor.End), new($"Far end, {unit}", across, 0.08, Anchor.End),
        ];
        return new Table(columns, [.. Laid.AllOf(cloth).Select(laid => RowOf(laid, cloth, system))]);
    }

    /// <summary>What the numbers mean, one sentence or two.</summary>
    public static string Explanation(ClothPlan cloth, MeasureSystem system)
    {
        if (cloth.Leftovers is not null)
            return "Measured on each leftover as it lies here, its grain from left to right and its right side up: along the grain from its leftmost point, across it from its lowest. "
                + "The ends are those of the grainline; the near one is further left.";
        string ends = cloth.Cloth.Ends > Length.Zero ? $", its end of {LengthWords.Tape(cloth.Cloth.Ends, system)} included" : "";
        string from = HasFoldAtBegin(cloth) ? "the fold at the left" : $"the cut end at the left{ends}";
        string edge = cloth.Marker.Surface.HasNearFold && cloth.Marker.Surface.Form != LayForm.Mixed
            ? "the fold"
            : "the lower edge of the cloth" + (cloth.Cloth.Selvage > Length.Zero ? ", its selvage included" : "");
        string section = cloth.Marker.Surface.Form == LayForm.Mixed ? ", in the folded section from the fold" : "";
        return $"Measured on washed cloth: along it from {from}; across it from {edge}{section}. "
            + "The ends are those of the grainline; the near one is closer to the left.";
    }

    /// <summary>Where a point of the lay lies, as measured: from the cut end, and from the fold or the lower edge of the cloth; on leftovers from the left and the lowest point of the leftover.</summary>
    public static (Length FromCutEnd, Length FromEdge) Measured(Point point, Placement placement, ClothPlan cloth)
    {
        if (cloth.Leftovers is { } table)
            return (Length.FromMicrometers(point.X - table.PlaceUnder(placement).At.X), Length.FromMicrometers(point.Y));
        LaySurface surface = cloth.Marker.Surface;
        bool fromFold = surface.HasNearFold && !(surface.Form == LayForm.Mixed && placement.Layers == 1);
        return (
            Length.FromMicrometers(point.X) + (HasFoldAtBegin(cloth) ? Length.Zero : cloth.Cloth.Ends),
            Length.FromMicrometers(point.Y) + (fromFold ? Length.Zero : cloth.Cloth.Selvage));
    }

    private static bool HasFoldAtBegin(ClothPlan cloth) => cloth.Marker.Surface.Folds.Any(fold => fold.Side == FoldSide.Begin);

    private static ImmutableArray<string> RowOf(Laid laid, ClothPlan cloth, MeasureSystem system)
    {
        Point[] ends = [laid.Placement.Map(laid.Placement.Piece.Grainline.Start), laid.Placement.Map(laid.Placement.Piece.Grainline.End)];
        Array.Sort(ends);
        (Length nearAlong, Length nearAcross) = Measured(ends[0], laid.Placement, cloth);
        (Length farAlong, Length farAcross) = Measured(ends[1], laid.Placement, cloth);
        return
        [
            laid.Number.ToString(CultureInfo.InvariantCulture), laid.Placement.Piece.Name, laid.Placement.Size,
            string.Create(CultureInfo.InvariantCulture, $"{laid.Placement.Copy} of {laid.Copies}"),
            cloth.Leftovers?.Under(laid.Placement).Name ?? PieceWords.Layers(laid.Placement), LiesOf(laid),
            LengthWords.TapeNumber(nearAlong, system), LengthWords.TapeNumber(nearAcross, system),
            LengthWords.TapeNumber(farAlong, system), LengthWords.TapeNumber(farAcross, system),
        ];
    }

    private static string LiesOf(Laid laid)
    {
        Turn turn = laid.Placement.Turn;
        string side = turn.Facing == Facing.Flipped ? "wrong side up" : "right side up";
        string degrees = turn.Angle == Angle.Zero ? "" : string.Create(CultureInfo.InvariantCulture, $"{turn.Angle.SignedDegrees:0.#}°");
        return PieceWords.Joined(side, degrees);
    }
}
