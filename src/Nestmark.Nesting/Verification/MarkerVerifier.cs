using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Nesting.Verification;

/// <summary>Judges a marker exactly, in whole micrometers, knowing nothing of the search that made it.</summary>
public static class MarkerVerifier
{
    /// <summary>Every way in which the marker breaks the task; empty for a sound one.</summary>
    public static ImmutableArray<string> Violations(LayTask task, Marker marker)
    {
        List<string> violations = [];
        CheckCounts(task, marker, violations);
        Polygon[] cuttingLines = [.. marker.Placements.Select(placement => placement.CuttingLine)];
        CheckEdges(task, marker, cuttingLines, violations);
        CheckRules(task, marker, violations);
        CheckOverlaps(task.Gap, marker, cuttingLines, violations);
        return [.. violations];
    }

    private static void CheckCounts(LayTask task, Marker marker, List<string> violations)
    {
        if (marker.Placements.Length != task.Demands.Length)
        {
            violations.Add($"{marker.Placements.Length} placements for {task.Demands.Length} demands");
            return;
        }
        for (int i = 0; i < task.Demands.Length; i++)
        {
            Demand demand = task.Demands[i];
            Placement placement = marker.Placements[i];
            bool matches = ReferenceEquals(placement.Piece, demand.Piece) && placement.Size == demand.Size
                && placement.Copy == demand.Copy && placement.Layers == demand.Layers && placement.Contact == demand.Contact;
            if (!matches)
                violations.Add($"{Name(placement)} does not answer demand {i + 1}");
        }
    }

    private static void CheckEdges(LayTask task, Marker marker, Polygon[] cuttingLines, List<string> violations)
    {
        Box lay = new(0, 0, marker.LayLength.Micrometers, task.Surface.Depth.Micrometers);
        for (int i = 0; i < cuttingLines.Length; i++)
        {
            if (!lay.Contains(cuttingLines[i].Bounds))
                violations.Add($"{Name(marker.Placements[i])} reaches beyond the lay");
        }
        long farthest = cuttingLines.Length == 0 ? 0 : cuttingLines.Max(line => line.Bounds.MaxX);
        if (farthest != marker.LayLength.Micrometers)
            violations.Add("the lay length is not that of its placements");
    }

    private static void CheckRules(LayTask task, Marker marker, List<string> violations)
    {
        Dictionary<string, int> headings = [];
        for (int i = 0; i < Math.Min(task.Demands.Length, marker.Placements.Length); i++)
        {
            Demand demand = task.Demands[i];
            Placement placement = marker.Placements[i];
            if (!demand.Turns.Contains(placement.Turn))
                violations.Add($"{Name(placement)} is turned in a way it may not lie");
            if (placement.Contact == FoldContact.OnFold && !LiesOnFold(task, placement))
                violations.Add($"{Name(placement)} does not lie on the fold");
            if (demand.NapGroup.Length == 0)
                continue;
            int heading = NapHeading.Of(placement.Turn);
            if (headings.TryGetValue(demand.NapGroup, out int known) && known != heading)
                violations.Add($"{Name(placement)} lies against the nap of its size");
            headings[demand.NapGroup] = heading;
        }
    }

    private static bool LiesOnFold(LayTask task, Placement placement) =>
        task.Surface.HasFold
        && placement.Piece.FoldEdge is { } fold
        && placement.Map(fold.Start).Y == 0
        && placement.Map(fold.End).Y == 0;

    private static void CheckOverlaps(Length gap, Marker marker, Polygon[] cuttingLines, List<string> violations)
    {
        for (int i = 0; i < cuttingLines.Length; i++)
        {
            for (int j = i + 1; j < cuttingLines.Length; j++)
            {
                if (InteriorOverlap.Of(cuttingLines[i], cuttingLines[j], Point.Origin))
                    violations.Add($"{Name(marker.Placements[i])} overlaps {Name(marker.Placements[j])}");
                else if (gap > Length.Zero && !Clearance.IsAtLeast(cuttingLines[i], cuttingLines[j], gap))
                    violations.Add($"{Name(marker.Placements[i])} is too near to {Name(marker.Placements[j])}");
            }
        }
    }

    private static string Name(Placement placement) => $"{placement.Piece.Name} {placement.Size} copy {placement.Copy}";
}
