using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Yardage.Charts;

/// <summary>Lets the cells of a chart use each other's markers.</summary>
/// <remarks>
/// What lies on narrow cloth lies on wider cloth of the same kind, and what lies with nap lies without: the strip begins at the fold or the near selvage,
/// and the turns of the stricter rule are among those of the looser one. So no cell needs more cloth than a stricter one, as a search by chance might say.
/// </remarks>
public static class ChartSharing
{
    /// <summary>The entries of the cells that have a finding, in the order of the cells.</summary>
    /// <param name="job">The job.</param>
    /// <param name="cells">All cells.</param>
    /// <param name="findings">What was found, cell by cell.</param>
    public static ImmutableArray<ChartEntry> Entries(Job job, ImmutableArray<ChartCell> cells, IReadOnlyDictionary<ChartCell, ChartFinding> findings) =>
        [.. cells.Where(findings.ContainsKey).Select(cell => EntryOf(job, cell, cells, findings))];

    private static ChartEntry EntryOf(Job job, ChartCell cell, ImmutableArray<ChartCell> cells, IReadOnlyDictionary<ChartCell, ChartFinding> findings)
    {
        Cloth cloth = cell.ClothOf(job);
        ChartCell best = cell;
        if (MarkersLieOnWiderCloth(cloth))
        {
            foreach (ChartCell other in cells.Where(other => IsStricter(other, cell) && findings.ContainsKey(other)))
            {
                if (findings[other].Unplaced.IsEmpty && (!findings[best].Unplaced.IsEmpty || findings[other].LayLength < findings[best].LayLength))
                    best = other;
            }
        }
        ChartFinding finding = findings[best];
        if (best != cell)
            finding = finding with { EfficiencyRatio = finding.EfficiencyRatio * best.ClothOf(job).UsableWidth.TotalMillimeters / cloth.UsableWidth.TotalMillimeters };
        Purchase purchase = Purchasing.For(cloth, finding.LayLength, job.System);
        return new ChartEntry(
            cell, finding, best, purchase.BeforeWash,
            purchase.BeforeWash.RoundedUpTo(StepOf(cloth, MeasureSystem.Metric, job.System)),
            purchase.BeforeWash.RoundedUpTo(StepOf(cloth, MeasureSystem.Imperial, job.System)));
    }

    // A fold at both edges, or flaws and shades that lie elsewhere on wider cloth, would not do.
    private static bool MarkersLieOnWiderCloth(Cloth cloth) => cloth.Lay is LayForm.Open or LayForm.Folded
        && cloth.Flaws.IsEmpty && cloth.NearShade == Length.Zero && cloth.FarShade == Length.Zero;

    private static bool IsStricter(ChartCell other, ChartCell cell) =>
        other.Cloth == cell.Cloth && other.Size == cell.Size && other.Width <= cell.Width && Strictness(other.Nap) >= Strictness(cell.Nap);

    private static int Strictness(Nap nap) => nap switch
    {
        Nap.OneWay => 2,
        Nap.BySize => 1,
        _ => 0,
    };

    // The shop sells by its own step in its own units, and by the usual one in the others.
    private static Length StepOf(Cloth cloth, MeasureSystem system, MeasureSystem ofJob) =>
        system == ofJob ? cloth.Buying.Step : LengthWords.UsualStep(system);
}
