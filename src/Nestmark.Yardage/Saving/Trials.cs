using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Yardage.Saving;

/// <summary>The changes worth trying on a cloth. To ignore its nap is not among them: the garment would show it.</summary>
internal static class Trials
{
    private const int MostWidths = 2;
    private const int MostTurned = 3;

    private static readonly (LayForm Form, string What)[] Forms =
    [
        (LayForm.Open, "lay it open"), (LayForm.Folded, "fold it lengthwise"), (LayForm.PartialFold, "fold it over in part"), (LayForm.DoubleFold, "fold both selvages in"),
        (LayForm.Mixed, "fold a first section only"), (LayForm.CrosswiseFold, "fold it across"), (LayForm.CrosswiseTurned, "fold it across and turn the upper layer"),
    ];

    /// <summary>The changes for one cloth of a plan that can hold everything.</summary>
    public static ImmutableArray<Trial> Of(Job job, ClothPlan before)
    {
        Job alone = job with { Cloths = [before.Cloth], Pieces = [.. job.Pieces.Where(piece => piece.Cloth == before.Cloth.Name)] };
        IEnumerable<Trial> all = [.. OtherLays(alone, before), .. WiderCloths(alone, before), .. Turned(alone, before), .. PiecedTrials.Of(alone, before), .. NarrowerSeams(alone, before), .. NoGap(alone, before)];
        return [.. all.Where(trial => HoldsEverything(trial.Job))];
    }

    private static bool HoldsEverything(Job job) => ClothWork.Of(job, job.Cloths[0], LengthWords.WordingOf(job.System)).Options[0].Impossible.IsEmpty;

    // A tube stays one, leftovers lie as they are, and where the planner chose the form it has told the others.
    private static IEnumerable<Trial> OtherLays(Job job, ClothPlan before) => before.Cloth.Lay is LayForm.Tubular or LayForm.Remnants or LayForm.Best
        ? []
        : Forms.Where(form => form.Form != before.Cloth.Lay).Select(form => new Trial(
            SavingKind.OtherLay, form.What, before, With(job, before.Cloth with { Lay = form.Form, FoldDepth = null }), after => Spread(before, after, job.System)));

    private static string Spread(ClothPlan before, ClothPlan after, MeasureSystem system)
    {
        int turned = after.Marker.Placements.Count(placement => placement.Turn.Facing == Facing.Flipped);
        string how = after.Cloth.Lay is LayForm.Open or LayForm.Folded ? "" : LayWords.Instruction(after.Marker.Surface, system) + "; ";
        string pieces = string.Create(
            CultureInfo.InvariantCulture, $"{how}{after.Marker.Placements.Length} pieces to lay and trace one by one instead of {before.Marker.Placements.Length}");
        return turned == 0 ? pieces : pieces + string.Create(CultureInfo.InvariantCulture, $", {turned} of them turned over");
    }

    // Flaws are those of the cloth at hand.
    private static IEnumerable<Trial> WiderCloths(Job job, ClothPlan before) => LengthWords.WordingOf(job.System).WidthsOnSale
        .Where(width => width > before.Cloth.Width && before.Cloth.Flaws.IsEmpty)
        .Take(MostWidths)
        .Select(width => new Trial(
            SavingKind.WiderCloth, $"cloth {LengthWords.Tape(width, job.System)} wide", before, With(job, before.Cloth with { Width = width }), after => WorthIt(before, after, job.System)));

    private static string WorthIt(ClothPlan before, ClothPlan after, MeasureSystem system)
    {
        decimal longer = before.Purchase.ToBuy.Micrometers / (decimal)after.Purchase.ToBuy.Micrometers;
        (string unit, decimal units) = system == MeasureSystem.Imperial
            ? ("yard", after.Purchase.ToBuy.Micrometers / (decimal)Length.MicrometersPerYard)
            : ("meter", after.Purchase.ToBuy.Micrometers / 1_000_000m);
        if (before.Purchase.Cost is decimal cost)
            return string.Create(CultureInfo.InvariantCulture, $"cheaper while a {unit} of it costs less than {Math.Floor(cost / units * 100) / 100:0.00} {before.Purchase.Currency}").TrimEnd();
        return string.Create(CultureInfo.InvariantCulture, $"cheaper while a {unit} of it costs less than {Math.Floor(longer * 100) / 100:0.00} times as much");
    }

    // Across the grain a nap would run sideways, so only cloth without one is tried. A half on the fold cannot turn.
    private static IEnumerable<Trial> Turned(Job job, ClothPlan before)
    {
        if (before.Cloth.Nap != Nap.None)
            return [];
        return job.Pieces
            .Where(piece => piece.Draft is not null && piece.Piece.Grain == GrainRule.Along && (piece.Piece.Cut.Kind != CutKind.OnFold || before.Marker.Surface.Form == LayForm.Open))
            .GroupBy(piece => piece.Piece.Name)
            .OrderByDescending(sizes => sizes.Sum(piece => piece.Piece.CuttingLine.AreaSquareMillimeters))
            .ThenBy(sizes => sizes.Key, StringComparer.Ordinal)
            .Take(MostTurned)
            .Select(sizes => new Trial(
                SavingKind.TurnedAcross, $"lay {sizes.Key} across the grain", before,
                Redrafted(job, piece => piece.Piece.Name == sizes.Key, draft => draft with { Grain = GrainRule.Across }),
                _ => $"{sizes.Key} then hangs and gives the other way"));
    }

    // Hems stay as deep as they are: only what lies between 1 and 2 cm is taken for a seam. references/trade.md 3.1: 1 cm in ready-to-wear, 3/8 in.
    private static IEnumerable<Trial> NarrowerSeams(Job job, ClothPlan before)
    {
        Length narrow = job.System == MeasureSystem.Imperial ? Length.FromInches(0.375) : Length.FromMillimeters(10);
        if (!job.Pieces.Any(piece => piece.Draft is PieceDraft draft && Narrowed(draft, narrow) != draft))
            return [];
        string words = LengthWords.Tape(narrow, job.System);
        return
        [
            new Trial(
                SavingKind.NarrowerSeams, $"seam allowances of {words}", before, Redrafted(job, _ => true, draft => Narrowed(draft, narrow)),
                _ => "less to let out later, and fraying cloth needs its edges finished"),
        ];
    }

    private static PieceDraft Narrowed(PieceDraft draft, Length narrow)
    {
        if (draft.Meaning != OutlineMeaning.SeamLine || (!IsSeam(draft.Seam, narrow) && !draft.Edges.Any(edge => IsSeam(edge.Width, narrow))))
            return draft;
        return draft with
        {
            Seam = IsSeam(draft.Seam, narrow) ? narrow : draft.Seam,
            Edges = [.. draft.Edges.Select(edge => IsSeam(edge.Width, narrow) ? edge with { Width = narrow } : edge)],
        };
    }

    private static bool IsSeam(Length width, Length narrow) => width > narrow && width <= Length.FromMillimeters(20);

    private static IEnumerable<Trial> NoGap(Job job, ClothPlan before)
    {
        if (before.Cloth.Gap > Length.Zero)
            yield return new(SavingKind.NoGap, "no gap between pieces", before, With(job, before.Cloth with { Gap = Length.Zero }), _ => "cutting lines touch, so they must be cut exactly");
    }

    private static Job With(Job job, Cloth cloth) => job with { Cloths = [cloth] };

    private static Job Redrafted(Job job, Func<JobPiece, bool> which, Func<PieceDraft, PieceDraft> change) => job with
    {
        Pieces = [.. job.Pieces.Select(piece => piece.Draft is PieceDraft draft && which(piece) && PieceMaking.Make(change(draft)).Piece is Piece made ? piece with { Piece = made } : piece)],
    };
}
