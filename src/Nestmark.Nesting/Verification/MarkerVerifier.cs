using System.Collections.Immutable;
using Nestmark.Cloths;
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
        if (!ReferenceEquals(marker.Surface, task.Surface))
            violations.Add("the marker lies on another lay");
        CheckEdges(marker, cuttingLines, violations);
        CheckObstacles(task, marker, violations);
        CheckRules(task, marker, violations);
        CheckOverlaps(task.Gap, marker, cuttingLines, violations);
        if (violations.Count == 0)
            violations.AddRange(PrintVerifier.Violations(task, marker));
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

    private static void CheckEdges(Marker marker, Polygon[] cuttingLines, List<string> violations)
    {
        for (int i = 0; i < cuttingLines.Length; i++)
        {
            Placement placement = marker.Placements[i];
            Box room = cuttingLines[i].Bounds;
            if (!marker.Surface.Bands.Any(band => band.Layers == placement.Layers && band.Holds(room, marker.LayLength)))
                violations.Add($"{Name(placement)} does not lie within {placement.Layers} layers of the lay");
        }
        long farthest = cuttingLines.Length == 0 ? 0 : cuttingLines.Max(line => line.Bounds.MaxX);
        if (farthest != marker.LayLength.Micrometers)
            violations.Add("the lay length is not that of its placements");
    }

    private static void CheckObstacles(LayTask task, Marker marker, List<string> violations)
    {
        for (int i = 0; i < Math.Min(task.Demands.Length, marker.Placements.Length); i++)
        {
            Placement placement = marker.Placements[i];
            Polygon? clean = task.Demands[i].Flaws.AreaOf(placement.Piece.CuttingLine)?.Mapped(placement.Map);
            if (clean is not null && marker.Surface.Shades.Any(strip => clean.Bounds.MinY < strip.High.Micrometers && clean.Bounds.MaxY > strip.Low.Micrometers))
                violations.Add($"{Name(placement)} lies on an off-color strip");
            foreach (Obstacle obstacle in task.Obstacles)
            {
                Polygon? kept = obstacle.Kind == ObstacleKind.NoCloth ? placement.CuttingLine : clean;
                if (kept is not null && InteriorOverlap.Of(obstacle.Area, kept, Point.Origin))
                    violations.Add($"{Name(placement)} lies {(obstacle.Kind == ObstacleKind.NoCloth ? "where there is no cloth" : "on a flaw")}");
            }
        }
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
            if (placement.Contact == FoldContact.OnFold && !LiesOnFold(task.Surface, placement))
                violations.Add($"{Name(placement)} does not lie on the fold");
            if (demand.NapGroup.Length == 0)
                continue;
            int heading = NapHeading.Of(placement.Turn);
            if (headings.TryGetValue(demand.NapGroup, out int known) && known != heading)
                violations.Add($"{Name(placement)} lies against the nap of its size");
            headings[demand.NapGroup] = heading;
        }
    }

    private static bool LiesOnFold(LaySurface surface, Placement placement)
    {
        if (placement.Piece.FoldEdge is not { } edge)
            return false;
        Point start = placement.Map(edge.Start);
        Point end = placement.Map(edge.End);
        return surface.Folds.Any(fold => fold.Side == FoldSide.Begin
            ? start.X == fold.At.Micrometers && end.X == fold.At.Micrometers
            : start.Y == fold.At.Micrometers && end.Y == fold.At.Micrometers);
    }

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
