using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;
using Nestmark.Pieces;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace Nestmark.Tests.Nesting;

/// <summary>Looks at a printed cloth after it is cut and spread flat: which color each matched point has, and the cloth beside it, on every copy; with NetTopologySuite.</summary>
/// <remarks>A color is the distance from the nearest bar on an even print, and the distance from the bar before on an uneven one. Matched seams show the same run of colors.</remarks>
internal static class PrintJudge
{
    private const double Slack = 12;

    private static readonly double[] Steps = [-17_000, -6_000, -1_500, 0, 2_500, 9_000, 23_000];

    /// <summary>Every rule that the cut pieces break; rules about pieces that were not placed are passed over.</summary>
    public static List<string> Faults(Cloth cloth, ImmutableArray<MatchRule> rules, Marker marker)
    {
        List<string> faults = [];
        foreach (MatchRule rule in rules)
        {
            foreach (ClothAxis axis in rule.Axes)
            {
                foreach (string size in marker.Placements.Select(placement => placement.Size).Distinct())
                {
                    List<double[]> runs = [.. RunsOf(cloth, axis, rule.First, size, marker)];
                    if (rule.Second is not null)
                    {
                        double[][] others = [.. RunsOf(cloth, axis, rule.Second, size, marker)];
                        if (runs.Count == 0 || others.Length == 0)
                            continue;
                        runs.AddRange(others);
                    }
                    if (runs.Any(run => !AreAlike(cloth, axis, run, WantedOf(cloth, axis, rule, runs[0]))))
                        faults.Add($"{rule.Text} ({axis}, \"{size}\")");
                }
            }
        }
        return faults;
    }

    private static double[] WantedOf(Cloth cloth, ClothAxis axis, MatchRule rule, double[] first)
    {
        double repeat = RepeatOf(cloth, axis);
        return rule.Target switch
        {
            MatchTarget.Bar => [.. Steps.Select(step => ColorOf(cloth, repeat, step))],
            MatchTarget.BetweenBars => [.. Steps.Select(step => ColorOf(cloth, repeat, step + repeat / 2))],
            _ => first,
        };
    }

    private static double RepeatOf(Cloth cloth, ClothAxis axis) => (axis == ClothAxis.Along ? cloth.Repeat!.Along : cloth.Repeat!.Across)!.Value.Micrometers;

    private static bool AreAlike(Cloth cloth, ClothAxis axis, double[] left, double[] right) => left.Zip(right).All(pair =>
    {
        double difference = Math.Abs(pair.First - pair.Second);
        return Math.Min(difference, RepeatOf(cloth, axis) - difference) <= Slack;
    });

    private static double ColorOf(Cloth cloth, double repeat, double place)
    {
        double rest = place - repeat * Math.Floor(place / repeat);
        return cloth.Repeat!.Balance == PrintBalance.Even ? Math.Min(rest, repeat - rest) : rest;
    }

    private static IEnumerable<double[]> RunsOf(Cloth cloth, ClothAxis axis, MatchPoint point, string size, Marker marker)
    {
        double bar = axis == ClothAxis.Along
            ? marker.FirstBar.GetValueOrDefault().Micrometers
            : cloth.Repeat!.FirstBar is { } given ? (given - cloth.Selvage).Micrometers : cloth.Lay == LayForm.Tubular ? 0 : cloth.UsableWidth.Micrometers / 2.0;
        foreach (Placement placement in marker.Placements.Where(placement => placement.Piece.Name == point.Piece && placement.Size == size))
        {
            Nestmark.Geometry.Point place = PlaceOf(placement.Piece, point.Point);
            bool isAcross = placement.Piece.Grain == GrainRule.Across;
            int[] sides = placement.Piece.CenterLine is null ? [1] : [1, -1];
            foreach (AffineTransformation toSheet in SheetsOf(placement, marker))
            {
                foreach (int side in sides)
                {
                    yield return [.. Steps.Select(step =>
                    {
                        bool runsAlongPiece = (axis == ClothAxis.Along) != isAcross;
                        Coordinate at = runsAlongPiece ? new Coordinate(place.X + step, side * place.Y) : new Coordinate(place.X, side * (place.Y + step));
                        Coordinate there = toSheet.Transform(at, new Coordinate());
                        return ColorOf(cloth, RepeatOf(cloth, axis), (axis == ClothAxis.Along ? there.X : there.Y) - bar);
                    })];
                }
            }
        }
    }

    /// <summary>A corner; on an opened piece the ends of the center line, A and B of the half, may be corners no longer.</summary>
    private static Nestmark.Geometry.Point PlaceOf(Piece piece, string letter) =>
        piece.Corners.FirstOrDefault(corner => corner.Letter == letter)?.Place
        ?? (letter == "B" ? piece.CenterLine!.End : letter == "A" ? piece.CenterLine!.Start : throw new ArgumentException("There is no such corner.", nameof(letter)));

    /// <summary>From the piece to the flat cloth, for each layer that the placement cuts.</summary>
    private static IEnumerable<AffineTransformation> SheetsOf(Placement placement, Marker marker)
    {
        AffineTransformation onLay = SheetJudge.OnLay(placement);
        Coordinate center = onLay.Transform(Shapes.ToNts(placement.Piece.CuttingLine)).EnvelopeInternal.Centre;
        foreach (SheetLayer layer in SheetJudge.LayersOf(marker).Where(layer => layer.Region.Contains(center)))
        {
            AffineTransformation whole = new(onLay);
            whole.Compose(layer.ToSheet);
            yield return whole;
        }
    }
}
