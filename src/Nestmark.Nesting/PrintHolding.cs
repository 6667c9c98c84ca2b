using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting.Matching;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>From the rules of a job to what holds each piece: rules join pieces to groups, and each piece of a group has a fixed shift against the others.</summary>
/// <remarks>
/// A piece's coordinate and its shift together are a coordinate in the garment, which meets the same place of the print on every piece.
/// So turns and flips need not be known here: an even print seen from its bar is the same both ways, and a copy that lies the other way round has its shift subtracted.
/// A piece that is cut on the fold is matched on both its sides only when its center line lies on a bar or in the middle between two.
/// </remarks>
public static class PrintHolding
{
    private const long SlackMicrometers = 200;
    private const string ThePrint = "";

    /// <summary>The orders with what holds them; as they are when no rule concerns them.</summary>
    /// <param name="cloth">The cloth that they are cut from.</param>
    /// <param name="orders">In the order of the job.</param>
    /// <param name="rules">Every rule of the job; those about other pieces are passed over.</param>
    public static ImmutableArray<PieceOrder> Held(Cloth cloth, ImmutableArray<PieceOrder> orders, ImmutableArray<MatchRule> rules)
    {
        if (rules.IsEmpty || (cloth.Repeat is null && cloth.Border is null))
            return orders;
        Dictionary<PieceOrder, PrintHold> holds = [];
        foreach (IGrouping<string, PieceOrder> size in orders.GroupBy(order => order.Size))
            HoldSize(cloth, [.. size], rules, holds);
        return [.. orders.Select(order => holds.TryGetValue(order, out PrintHold? hold) ? order with { Hold = hold } : order)];
    }

    private static void HoldSize(Cloth cloth, PieceOrder[] orders, ImmutableArray<MatchRule> rules, Dictionary<PieceOrder, PrintHold> holds)
    {
        ImmutableArray<PrintTie> ties = [.. rules.SelectMany(rule => TiesOf(rule, orders))];
        Dictionary<string, string> conflicts = [];
        ShiftTable? along = TableFor(ClothAxis.Along, cloth.Repeat?.Along);
        ShiftTable? across = TableFor(ClothAxis.Across, cloth.Repeat?.Across);
        foreach (PieceOrder order in orders)
        {
            ImmutableArray<PrintTie> own = [.. ties.Where(tie => tie.First.Piece == order.Piece.Name || tie.Second?.Piece == order.Piece.Name)];
            if (!own.IsEmpty)
                holds[order] = HoldOf(cloth, orders, order, own, along, across, conflicts);
        }

        ShiftTable? TableFor(ClothAxis axis, Length? repeat) => repeat is { } length ? Joined(cloth, axis, length.Micrometers, orders, ties, conflicts) : null;
    }

    private static IEnumerable<PrintTie> TiesOf(MatchRule rule, PieceOrder[] orders)
    {
        TiedPoint? first = PointOf(rule.First, orders);
        TiedPoint? second = rule.Second is null ? null : PointOf(rule.Second, orders);
        if (first is null || (rule.Second is not null && second is null))
            return [];
        return rule.Axes.Select(axis => new PrintTie(rule.Text, orders[0].Size, axis, first, rule.Target, second));
    }

    private static TiedPoint? PointOf(MatchPoint point, PieceOrder[] orders) =>
        orders.FirstOrDefault(order => order.Piece.Name == point.Piece) is { } order && PiecePoints.Find(order.Piece, point.Point) is { } place
            ? new TiedPoint(point.Piece, place)
            : null;

    private static ShiftTable Joined(Cloth cloth, ClothAxis axis, long repeat, PieceOrder[] orders, ImmutableArray<PrintTie> ties, Dictionary<string, string> conflicts)
    {
        ShiftTable table = new(repeat);
        foreach (PrintTie tie in ties.Where(tie => tie.Axis == axis && tie.Target != MatchTarget.Border))
        {
            long at = Coordinate(cloth, axis, orders, tie.First);
            long miss = tie.Second is { } second
                ? table.Join(tie.First.Piece, second.Piece, Coordinate(cloth, axis, orders, second) - at)
                : table.Join(tie.First.Piece, ThePrint, (tie.Target == MatchTarget.BetweenBars ? repeat / 2 : 0) - at);
            if (miss > SlackMicrometers)
                conflicts.TryAdd(tie.First.Piece, MatchReasons.Contradiction(tie.Text, Length.FromMicrometers(miss)));
        }
        return table;
    }

    private static PrintHold HoldOf(
        Cloth cloth, PieceOrder[] orders, PieceOrder order, ImmutableArray<PrintTie> own, ShiftTable? along, ShiftTable? across, Dictionary<string, string> conflicts)
    {
        PrintTie? border = own.FirstOrDefault(tie => tie.Target == MatchTarget.Border && tie.First.Piece == order.Piece.Name);
        AxisHold? alongHold = AxisHoldOf(ClothAxis.Along, along);
        AxisHold? acrossHold = AxisHoldOf(ClothAxis.Across, across);
        conflicts.TryGetValue(order.Piece.Name, out string? conflict);
        if (border is not null && acrossHold is not null)
            conflict ??= MatchReasons.BorderAndBars(border.Text);
        return new PrintHold
        {
            Along = alongHold,
            Across = acrossHold,
            OnBorderMicrometers = border is null ? null : Coordinate(cloth, ClothAxis.Across, orders, border.First),
            IsAcross = LiesAcross(cloth, order.Piece),
            Conflict = conflict,
            Ties = own,
        };

        AxisHold? AxisHoldOf(ClothAxis axis, ShiftTable? table)
        {
            if (table is null || !own.Any(tie => tie.Axis == axis && tie.Target != MatchTarget.Border))
                return null;
            long repeat = (axis == ClothAxis.Along ? cloth.Repeat!.Along : cloth.Repeat!.Across)!.Value.Micrometers;
            return GroupHold(cloth, axis, repeat, orders, order, table, conflicts);
        }
    }

    /// <summary>The group's name, the piece's shift and the phases that its symmetric pieces and bars leave.</summary>
    private static AxisHold GroupHold(
        Cloth cloth, ClothAxis axis, long repeat, PieceOrder[] orders, PieceOrder order, ShiftTable table, Dictionary<string, string> conflicts)
    {
        (string root, long shift) = table.Find(order.Piece.Name);
        (string printRoot, long printShift) = table.Find(ThePrint);
        bool isOnPrint = root == printRoot;
        shift = LayPrint.Modulo(shift - (isOnPrint ? printShift : 0), repeat);
        Piece[] mirrored = [.. orders.Where(other => table.Find(other.Piece.Name).Root == root && IsMirrored(cloth, axis, other.Piece)).Select(other => other.Piece)];
        if (mirrored.Length > 0 && cloth.Repeat!.Balance == PrintBalance.Uneven)
            conflicts.TryAdd(order.Piece.Name, MatchReasons.UnevenBothSides(mirrored[0].Name));
        long[] centers = [.. mirrored.Where(piece => piece.Cut.Kind == CutKind.OnFold).Select(piece => table.Find(piece.Name).Shift - (isOnPrint ? printShift : 0)).Distinct()];
        long anchor = isOnPrint ? 0 : centers.FirstOrDefault();
        if (centers.Any(center => ShiftTable.Miss(center - anchor, repeat / 2) > SlackMicrometers))
            conflicts.TryAdd(order.Piece.Name, MatchReasons.CentersOffBars());
        ImmutableArray<long> phases = isOnPrint ? [0]
            : centers.Length > 0 ? [LayPrint.Modulo(-anchor, repeat), LayPrint.Modulo(-anchor + repeat / 2, repeat)] : [];
        return new AxisHold($"{axis} {order.Size} {root}", repeat, shift, phases);
    }

    /// <summary>Whether both sides of a garment come from mirror images of the piece in this direction.</summary>
    private static bool IsMirrored(Cloth cloth, ClothAxis axis, Piece piece) =>
        piece.Cut.Kind != CutKind.Copies && (axis == ClothAxis.Across) != LiesAcross(cloth, piece);

    private static bool LiesAcross(Cloth cloth, Piece piece) => AllowedTurns.GrainFor(cloth, piece) == GrainRule.Across;

    private static long Coordinate(Cloth cloth, ClothAxis axis, PieceOrder[] orders, TiedPoint point)
    {
        Piece piece = orders.First(order => order.Piece.Name == point.Piece).Piece;
        return (axis == ClothAxis.Along) != LiesAcross(cloth, piece) ? point.Place.X : point.Place.Y;
    }
}
