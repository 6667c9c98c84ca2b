using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting.Matching;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>The rules of placing: which turns, sides, layers and fold contact each piece may have on a lay.</summary>
/// <remarks>What the words on a piece mean: references/trade.md 4.2. On cloth with one right side a copy is flipped only as the second of a pair in one layer.</remarks>
public static class LayRules
{
    /// <summary>The task of laying some pieces on a cloth spread as it says; pieces that cannot lie there are named with the reason and what would help, in centimeters.</summary>
    /// <param name="cloth">The cloth and how it is spread; its usable width is above zero, and its form needs no choice.</param>
    /// <param name="orders">In the order of the job, one for each piece and size.</param>
    /// <exception cref="ArgumentException">As for <see cref="LaySurface.Of(Cloth)"/>, or a tilt is beyond 45 degrees.</exception>
    public static LayTask TaskFor(Cloth cloth, IEnumerable<PieceOrder> orders) =>
        TaskFor(cloth, LaySurface.Of(cloth), orders, LayWording.Metric, _ => Layering.TwoLayers);

    /// <summary>The task of laying some pieces on a lay.</summary>
    /// <param name="cloth">The cloth; how it is spread comes from the surface.</param>
    /// <param name="surface">The lay.</param>
    /// <param name="orders">In the order of the job, one for each piece and size.</param>
    /// <param name="wording">How reasons speak of lengths.</param>
    /// <param name="layering">What is tried first for an order where the lay has one and two layers.</param>
    /// <returns>Only turns in which a piece fits between the edges of a band.</returns>
    /// <exception cref="ArgumentException">A tilt is beyond 45 degrees.</exception>
    public static LayTask TaskFor(
        Cloth cloth, LaySurface surface, IEnumerable<PieceOrder> orders, LayWording wording, Func<PieceOrder, Layering> layering)
    {
        List<Demand> demands = [];
        List<Unplaced> impossible = [];
        Length foldRoom = surface.Depth;
        foreach (PieceOrder order in orders)
        {
            string? reason = Refusal(cloth, surface, order) ?? AddDemands(cloth, surface, order, wording, layering(order), demands, ref foldRoom);
            if (reason is not null)
                impossible.Add(new Unplaced(order.Piece.Name, order.Size, reason));
        }
        LayTask task = new(surface, cloth.Gap, [.. demands], [.. impossible]) { Obstacles = FlawPlaces.On(cloth, surface) };
        return demands.Exists(demand => demand.Hold is not null) ? MatchRefusals.WithoutStuck(task with { Print = LayPrint.Of(cloth, surface) }) : task;
    }

    private static string? Refusal(Cloth cloth, LaySurface surface, PieceOrder order)
    {
        Piece piece = order.Piece;
        if (surface.Form == LayForm.CrosswiseFold && AllowedTurns.NapFor(cloth, piece) != Nap.None)
            return FitReasons.NapOnCrosswise(Title(order));
        if (MatchRefusals.Of(cloth, surface, order, Title(order)) is { } reason)
            return reason;
        if (!CopyForm.AlternativesFor(surface, order, AllowedTurns.NapFor(cloth, piece), Layering.TwoLayers).IsEmpty)
            return null;
        return piece.Cut.Kind == CutKind.OnFold ? FitReasons.NoFoldFor(piece, Title(order)) : FitReasons.SingleOnFolded(piece, Title(order));
    }

    /// <summary>Adds the placements of an order in the first way that fits; or adds none and returns why the way tried first does not.</summary>
    private static string? AddDemands(
        Cloth cloth, LaySurface surface, PieceOrder order, LayWording wording, Layering layering, List<Demand> demands, ref Length foldRoom)
    {
        string? reason = null;
        Nap nap = AllowedTurns.NapFor(cloth, order.Piece);
        LayPrint? print = order.Hold is null ? null : LayPrint.Of(cloth, surface);
        foreach (ImmutableArray<CopyForm> forms in CopyForm.AlternativesFor(surface, order, nap, layering))
        {
            Dictionary<CopyForm, ImmutableArray<Turn>> fitting = [];
            string? misfit = null;
            foreach (CopyForm form in forms.Distinct())
            {
                ImmutableArray<Turn> turns = [.. form.Turns(cloth, surface).Where(turn => order.Hold is null || HeldTurns.Bear(cloth, order.Hold, turn))];
                fitting[form] = [.. turns.Where(turn => Fits(surface, print, order.Hold, form, turn))];
                if (fitting[form].IsEmpty && print is not null)
                    misfit ??= MatchRefusals.Of(print, order.Hold!, form, turns, Title(order));
                if (fitting[form].IsEmpty)
                    misfit ??= turns.IsEmpty ? FitReasons.GrainOnFold(order.Piece, Title(order)) : FitReasons.TooDeep(cloth, surface, form, Title(order), turns.Min(turn => DepthOf(form.Piece, turn)), wording);
            }
            misfit ??= TakeFoldRoom(surface, order, forms, ref foldRoom);
            if (misfit is null)
            {
                Add(order, forms, fitting, NapGroupOf(nap, order), demands);
                return null;
            }
            reason ??= misfit;
        }
        return reason;
    }

    private static void Add(PieceOrder order, ImmutableArray<CopyForm> forms, Dictionary<CopyForm, ImmutableArray<Turn>> fitting, string napGroup, List<Demand> demands)
    {
        int copy = 0;
        foreach (CopyForm form in forms)
            demands.Add(new Demand(form.Piece, order.Size, ++copy, form.Layers, form.Contact, fitting[form], napGroup) { Flaws = FlawRuleOf(form.Piece), Hold = order.Hold });
    }

    /// <summary>A fold across the cloth is only as long as the cloth is wide.</summary>
    private static string? TakeFoldRoom(LaySurface surface, PieceOrder order, ImmutableArray<CopyForm> forms, ref Length foldRoom)
    {
        if (surface.Form != LayForm.CrosswiseFold || forms[0].Contact != FoldContact.OnFold)
            return null;
        Length wanted = Length.FromMicrometers(forms[0].Piece.CuttingLine.Bounds.Width + 100) * forms.Length;
        if (wanted > foldRoom)
            return FitReasons.CrosswiseFoldFull(Title(order));
        foldRoom -= wanted;
        return null;
    }

    private static bool Fits(LaySurface surface, LayPrint? print, PrintHold? hold, CopyForm form, Turn turn) =>
        HeldSeats.Of(surface, print, hold, form.Piece, form.Layers, form.Contact, turn, FlawRuleOf(form.Piece)).Any();

    private static FlawRule FlawRuleOf(Piece piece) => piece.Flaws switch
    {
        FlawTolerance.Anywhere => FlawRule.Bear,
        FlawTolerance.Allowances => new FlawRule(FlawBearing.KeepsOff, piece.SeamLine),
        _ => FlawRule.Avoid,
    };

    private static Length DepthOf(Piece piece, Turn turn) => Length.FromMicrometers(turn.Apply(piece.CuttingLine).Bounds.Height);

    private static string NapGroupOf(Nap nap, PieceOrder order)
    {
        if (nap != Nap.BySize || order.Piece.Grain == GrainRule.Any)
            return "";
        return order.Size.Length > 0 ? order.Size : "every size";
    }

    private static string Title(PieceOrder order) => order.Size.Length == 0 ? order.Piece.Name : order.Piece.Name + " " + order.Size;
}
