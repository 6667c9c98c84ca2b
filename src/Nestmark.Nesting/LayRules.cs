using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>The rules of placing: which turns, sides, layers and fold contact each piece may have on a cloth.</summary>
/// <remarks>What the words on a piece mean: references/trade.md 4.2. A copy is flipped only as the second of a pair on open cloth.</remarks>
public static class LayRules
{
    /// <summary>The task of laying some pieces on a cloth; pieces that cannot lie there are named with the reason and what would help, in centimeters.</summary>
    /// <param name="cloth">The cloth and how it is spread; its usable width is above zero.</param>
    /// <param name="orders">In the order of the job, one for each piece and size.</param>
    public static LayTask TaskFor(Cloth cloth, IEnumerable<PieceOrder> orders) => TaskFor(cloth, orders, LayWording.Metric);

    /// <summary>As <see cref="TaskFor(Cloth, IEnumerable{PieceOrder})"/>, with lengths in the user's own words.</summary>
    /// <param name="cloth">The cloth and how it is spread; its usable width is above zero.</param>
    /// <param name="orders">In the order of the job, one for each piece and size.</param>
    /// <param name="wording">How reasons speak of lengths.</param>
    /// <returns>Only turns in which a piece fits between the edges of the lay.</returns>
    /// <exception cref="ArgumentException">Nothing of the cloth's width is left for pieces, or a tilt is beyond 45 degrees.</exception>
    public static LayTask TaskFor(Cloth cloth, IEnumerable<PieceOrder> orders, LayWording wording)
    {
        LaySurface surface = LaySurface.Of(cloth);
        List<Demand> demands = [];
        List<Unplaced> impossible = [];
        foreach (PieceOrder order in orders)
        {
            if ((Refusal(surface, order) ?? AddDemands(cloth, order, wording, demands)) is { } reason)
                impossible.Add(new Unplaced(order.Piece.Name, order.Size, reason));
        }
        return new LayTask(surface, cloth.Gap, [.. demands], [.. impossible]);
    }

    private static string? Refusal(LaySurface surface, PieceOrder order)
    {
        Piece piece = order.Piece;
        if (!surface.HasFold)
            return null;
        if (piece.Cut.Kind == CutKind.OnFold && piece.Grain is GrainRule.Across or GrainRule.Bias)
            return FitReasons.GrainOnFold(piece, Title(order));
        return piece.Cut.Kind == CutKind.Copies && int.IsOddInteger(piece.Cut.Count) ? FitReasons.SingleOnFolded(piece, Title(order)) : null;
    }

    /// <summary>Adds the placements of an order; or adds none and returns why it cannot lie here.</summary>
    private static string? AddDemands(Cloth cloth, PieceOrder order, LayWording wording, List<Demand> demands)
    {
        LaySurface surface = LaySurface.Of(cloth);
        List<Demand> added = [];
        ImmutableArray<CopyForm> forms = CopyForm.ForOneGarment(surface, order.Piece);
        Dictionary<Facing, ImmutableArray<Turn>> fitting = [];
        foreach (CopyForm form in forms.DistinctBy(form => form.Facing))
        {
            ImmutableArray<Turn> turns = form.Turns(cloth);
            fitting[form.Facing] = [.. turns.Where(turn => DepthOf(form.Piece, turn) <= surface.Depth)];
            if (fitting[form.Facing].IsEmpty)
                return FitReasons.TooDeep(cloth, form, Title(order), turns.Min(turn => DepthOf(form.Piece, turn)), wording);
        }
        string napGroup = NapGroupOf(cloth.Nap, order);
        for (int garment = 0; garment < order.Garments; garment++)
        {
            foreach (CopyForm form in forms)
                added.Add(new Demand(form.Piece, order.Size, added.Count + 1, form.Layers, form.Contact, fitting[form.Facing], napGroup));
        }
        demands.AddRange(added);
        return null;
    }

    private static Length DepthOf(Piece piece, Turn turn) => Length.FromMicrometers(turn.Apply(piece.CuttingLine).Bounds.Height);

    private static string NapGroupOf(Nap nap, PieceOrder order)
    {
        if (nap != Nap.BySize || order.Piece.Grain == GrainRule.Any)
            return "";
        return order.Size.Length > 0 ? order.Size : "every size";
    }

    private static string Title(PieceOrder order) => order.Size.Length == 0 ? order.Piece.Name : order.Piece.Name + " " + order.Size;
}
