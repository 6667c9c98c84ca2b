using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>The ways to spread a cloth that are worth a trial: one where its form leaves no choice, several where depth, split or form are open.</summary>
public static class LayChoices
{
    private const int MostDepths = 6;
    private const int MostSplits = 8;

    // Open first: what cannot lie there cannot lie anywhere, so its reasons are the ones to tell.
    private static readonly LayForm[] FormsToChoose =
        [LayForm.Open, LayForm.Folded, LayForm.PartialFold, LayForm.DoubleFold, LayForm.CrosswiseFold, LayForm.CrosswiseTurned, LayForm.Mixed];

    /// <summary>The options of a cloth.</summary>
    /// <param name="cloth">The cloth; its usable width is above zero.</param>
    /// <param name="orders">In the order of the job.</param>
    /// <param name="wording">How reasons speak of lengths.</param>
    /// <returns>One or more; those of one form beside each other.</returns>
    /// <exception cref="ArgumentException">Nothing of the width is left for pieces, a fold is too deep for it, or a tilt is beyond 45 degrees.</exception>
    public static ImmutableArray<LayOption> For(Cloth cloth, ImmutableArray<PieceOrder> orders, LayWording wording)
    {
        if (cloth.Lay != LayForm.Best)
            return Of(cloth, cloth.Lay, orders, wording);
        ImmutableArray<LayOption> all = [.. FormsToChoose.Where(form => cloth.Flaws.IsEmpty || FlawPlaces.CanBeAvoidedOn(form)).SelectMany(form => Of(cloth, form, orders, wording))];
        int fewest = all.Min(option => option.Impossible.Length);
        return [.. all.Where(option => option.Impossible.Length == fewest)];
    }

    private static ImmutableArray<LayOption> Of(Cloth cloth, LayForm form, ImmutableArray<PieceOrder> orders, LayWording wording) => form switch
    {
        LayForm.PartialFold => PartialFolds(cloth, orders, wording),
        LayForm.Mixed => MixedLays(cloth, orders, wording),
        _ => [new LayOption(form, [LayRules.TaskFor(cloth, LaySurface.Of(cloth, form), orders, wording, _ => Layering.TwoLayers)])],
    };

    /// <summary>Depths at which a piece, or two above each other, just fit; for each, pairs through both layers, and pairs moved to the single part until both parts are equally full.</summary>
    private static ImmutableArray<LayOption> PartialFolds(Cloth cloth, ImmutableArray<PieceOrder> orders, LayWording wording)
    {
        List<LayOption> options = [];
        foreach (Length depth in DepthsFor(cloth, orders))
        {
            LaySurface surface = LaySurface.PartialFold(cloth.UsableWidth, depth).ShadedAs(cloth);
            options.Add(Option(_ => Layering.TwoLayers));
            HashSet<PieceOrder> single = Balanced(orders, depth.TotalMillimeters, (surface.Depth - depth).TotalMillimeters);
            if (single.Count > 0)
                options.Add(Option(order => single.Contains(order) ? Layering.OneLayer : Layering.TwoLayers));

            LayOption Option(Func<PieceOrder, Layering> layering) =>
                new(LayForm.PartialFold, [LayRules.TaskFor(cloth, surface, orders, wording, layering)]);
        }
        return [.. options];
    }

    private static ImmutableArray<Length> DepthsFor(Cloth cloth, ImmutableArray<PieceOrder> orders)
    {
        if (cloth.FoldDepth is { } given)
            return [given];
        Length half = cloth.UsableWidth / 2;
        long[] single = [.. orders.Where(order => order.Piece.Cut.Kind != CutKind.Copies).Select(order => order.Piece.CuttingLine.Bounds.Height)];
        long deepestHalf = orders.Where(order => order.Piece.Cut.Kind == CutKind.OnFold).Select(order => order.Piece.CuttingLine.Bounds.Height).Where(depth => depth < half.Micrometers).DefaultIfEmpty(0).Max();
        ImmutableArray<Length> depths =
        [
            .. single.Concat(single.SelectMany(first => single.Select(second => first + second)))
                .Where(depth => depth >= deepestHalf && depth < half.Micrometers)
                .Distinct().Order().Select(Length.FromMicrometers),
        ];
        ImmutableArray<Length> tried = depths.IsEmpty ? [half / 2] : [.. Spread(depths, MostDepths)];
        if (cloth.Repeat?.Across is not { } repeat || orders.All(order => order.Hold?.Across is null))
            return tried;
        ImmutableArray<Length> onBars = [.. tried.Select(depth => LayPrint.FoldOnBar(cloth, depth + repeat / 2)).Where(depth => depth > Length.Zero && depth < half).Distinct()];
        return onBars.IsEmpty ? tried : onBars;
    }

    /// <summary>Some of many, evenly, the first and the last among them.</summary>
    private static IEnumerable<T> Spread<T>(ImmutableArray<T> all, int most) => all.Length <= most
        ? all
        : Enumerable.Range(0, most).Select(i => all[i * (all.Length - 1) / (most - 1)]);

    /// <summary>Pairs to cut from one layer, small ones first, until both parts of a partial fold are equally full.</summary>
    private static HashSet<PieceOrder> Balanced(ImmutableArray<PieceOrder> orders, double foldedDepth, double singleDepth)
    {
        double folded = orders.Where(order => order.Piece.Cut.Kind != CutKind.Copies).Sum(LayerArea);
        double single = orders.Where(order => order.Piece.Cut.Kind == CutKind.Copies).Sum(order => LayerArea(order) * order.Piece.Cut.Count);
        HashSet<PieceOrder> moved = [];
        foreach (PieceOrder order in orders.Where(order => order.Piece.Cut.Kind == CutKind.Pairs).OrderBy(LayerArea))
        {
            if (folded / foldedDepth <= (single + 2 * LayerArea(order)) / singleDepth)
                break;
            folded -= LayerArea(order);
            single += 2 * LayerArea(order);
            moved.Add(order);
        }
        return moved;
    }

    private static double LayerArea(PieceOrder order) => order.Garments * order.Piece.CuttingLine.AreaSquareMillimeters;

    /// <summary>What needs two layers in the folded section, what needs one in the open section, and pairs in either: none, some or all of them open, small ones first. Both sections hold something where that is possible.</summary>
    private static ImmutableArray<LayOption> MixedLays(Cloth cloth, ImmutableArray<PieceOrder> orders, LayWording wording)
    {
        LaySurface folded = LaySurface.Of(cloth, LayForm.Folded);
        LaySurface open = LaySurface.Of(cloth, LayForm.Open);
        LayTask all = LayRules.TaskFor(cloth, folded, orders, wording, _ => Layering.TwoLayers);
        HashSet<PieceOrder> unfoldable = [.. orders.Where(order => IsAmong(all.Impossible, order) || !IsAlike(cloth, order.Piece))];
        ImmutableArray<PieceOrder> either = [.. orders.Where(order => !unfoldable.Contains(order)).OrderBy(LayerArea)];
        List<LayOption> options = [];
        foreach (int count in Spread([.. Enumerable.Range(0, either.Length + 1)], MostSplits))
        {
            HashSet<PieceOrder> single = WithTied([.. unfoldable, .. either.Take(count)], orders);
            LayTask first = LayRules.TaskFor(cloth, folded, orders.Where(order => !single.Contains(order)), wording, _ => Layering.TwoLayers);
            LayTask second = LayRules.TaskFor(cloth, open, orders.Where(single.Contains), wording, _ => Layering.OneLayer);
            options.Add(new LayOption(LayForm.Mixed, [first, second]));
        }
        ImmutableArray<LayOption> mixed = [.. options.Where(option => option.Sections.All(section => !section.Demands.IsEmpty))];
        return mixed.IsEmpty ? [.. options] : mixed;
    }

    /// <summary>Pieces that are matched to each other lie in the same section, where their places in the repeat are known.</summary>
    private static HashSet<PieceOrder> WithTied(HashSet<PieceOrder> single, ImmutableArray<PieceOrder> orders)
    {
        HashSet<string> groups = [.. single.SelectMany(GroupsOf)];
        PieceOrder[] added = [.. orders.Where(order => !single.Contains(order) && GroupsOf(order).Any(groups.Contains))];
        return added.Length == 0 ? single : WithTied([.. single, .. added], orders);
    }

    private static IEnumerable<string> GroupsOf(PieceOrder order) => new[] { order.Hold?.Along, order.Hold?.Across }.OfType<AxisHold>().Select(hold => hold.Group);

    private static bool IsAmong(ImmutableArray<Unplaced> impossible, PieceOrder order) =>
        impossible.Any(unplaced => unplaced.Piece == order.Piece.Name && unplaced.Size == order.Size);

    /// <summary>Whether two layers give what is asked for: halves, pairs, and copies that are their own mirror image.</summary>
    private static bool IsAlike(Cloth cloth, Piece piece) =>
        piece.Cut.Kind != CutKind.Copies || MirrorImage.IsItsOwn(piece, AllowedTurns.NapFor(cloth, piece));
}
