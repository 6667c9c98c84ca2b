using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
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
        string across = cloth.Marker.Surface.HasNearFold ? "to fold" : "to edge";
        string unit = LengthWords.TapeUnit(system);
        ImmutableArray<TableColumn> columns =
        [
            new("", "No.", 0.05, Anchor.Start), new("", "Piece", 0.19, Anchor.Start), new("", "Size", 0.06, Anchor.Start),
            new("", "Copy", 0.08, Anchor.Start), new("", "Cut", 0.09, Anchor.Start), new("", "Lies", 0.15, Anchor.Start),
            new($"Near end, {unit}", "to cut end", 0.11, Anchor.End), new($"Near end, {unit}", across, 0.08, Anchor.End),
            new($"Far end, {unit}", "to cut end", 0.11, Anchor.End), new($"Far end, {unit}", across, 0.08, Anchor.End),
        ];
        return new Table(columns, [.. Laid.AllOf(cloth).Select(laid => RowOf(laid, cloth, system))]);
    }

    /// <summary>What the numbers mean, one sentence or two.</summary>
    public static string Explanation(ClothPlan cloth, MeasureSystem system)
    {
        string ends = cloth.Cloth.Ends > Length.Zero ? $", its end of {LengthWords.Tape(cloth.Cloth.Ends, system)} included" : "";
        string edge = cloth.Marker.Surface.HasNearFold
            ? "the fold"
            : "the lower edge of the cloth" + (cloth.Cloth.Selvage > Length.Zero ? ", its selvage included" : "");
        return $"Measured on washed cloth: along it from the cut end at the left{ends}; across it from {edge}. "
            + "The ends are those of the grainline; the near one is closer to the cut end.";
    }

    /// <summary>Where a point of the lay lies, as measured: from the cut end, and from the fold or the lower edge of the cloth.</summary>
    public static (Length FromCutEnd, Length FromEdge) Measured(Point point, ClothPlan cloth) => (
        Length.FromMicrometers(point.X) + cloth.Cloth.Ends,
        Length.FromMicrometers(point.Y) + (cloth.Marker.Surface.HasNearFold ? Length.Zero : cloth.Cloth.Selvage));

    private static ImmutableArray<string> RowOf(Laid laid, ClothPlan cloth, MeasureSystem system)
    {
        Point[] ends = [laid.Placement.Map(laid.Placement.Piece.Grainline.Start), laid.Placement.Map(laid.Placement.Piece.Grainline.End)];
        Array.Sort(ends);
        (Length nearAlong, Length nearAcross) = Measured(ends[0], cloth);
        (Length farAlong, Length farAcross) = Measured(ends[1], cloth);
        return
        [
            laid.Number.ToString(CultureInfo.InvariantCulture), laid.Placement.Piece.Name, laid.Placement.Size,
            string.Create(CultureInfo.InvariantCulture, $"{laid.Placement.Copy} of {laid.Copies}"),
            PieceWords.Layers(laid.Placement), LiesOf(laid),
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
