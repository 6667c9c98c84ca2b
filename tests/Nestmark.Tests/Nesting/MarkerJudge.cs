using Nestmark.Geometry;
using Nestmark.Nesting;
using NetTopologySuite.Geometries;
using NetTopologySuite.Index.Strtree;

namespace Nestmark.Tests.Nesting;

/// <summary>Judges markers with NetTopologySuite alone, apart from our own geometry and verifier.</summary>
internal static class MarkerJudge
{
    /// <summary>Every fault found: overlap, outside, too near, wrong counts, against the nap, off the fold, a flip without a mirrored copy.</summary>
    public static List<string> Faults(LayTask task, Marker marker)
    {
        List<string> faults = [];
        NetTopologySuite.Geometries.Geometry[] shapes = [.. marker.Placements.Select(ToShape)];
        JudgeCounts(task, marker, faults);
        JudgeInside(task, marker, shapes, faults);
        JudgeOverlaps(task, marker, shapes, faults);
        JudgeNap(task, marker, faults);
        JudgeFolds(task, marker, shapes, faults);
        return faults;
    }

    /// <summary>The outline as the report gives it: piece points flipped, turned and moved, worked out here with plain trigonometry.</summary>
    private static NetTopologySuite.Geometries.Polygon ToShape(Placement placement)
    {
        double radians = placement.Turn.Angle.TotalDegrees * Math.PI / 180;
        double flip = placement.Turn.Facing == Facing.Flipped ? -1 : 1;
        (double sine, double cosine) = SineAndCosine(radians);
        List<Coordinate> ring = [.. placement.Piece.CuttingLine.Outer.Select(point => new Coordinate(
            Math.Round(point.X * cosine - flip * point.Y * sine) + placement.Offset.X,
            Math.Round(point.X * sine + flip * point.Y * cosine) + placement.Offset.Y))];
        ring.Add(ring[0].Copy());
        return new GeometryFactory().CreatePolygon([.. ring]);
    }

#pragma warning disable RS0030 // The judge does not use the program's own angles.
    private static (double Sine, double Cosine) SineAndCosine(double radians) => (Math.Sin(radians), Math.Cos(radians));
#pragma warning restore RS0030

    private static void JudgeCounts(LayTask task, Marker marker, List<string> faults)
    {
        IEnumerable<string> wanted = task.Demands.Select(demand => $"{demand.Piece.Name}/{demand.Size}/{demand.Copy}/{demand.Layers}").Order(StringComparer.Ordinal);
        IEnumerable<string> found = marker.Placements.Select(placement => $"{placement.Piece.Name}/{placement.Size}/{placement.Copy}/{placement.Layers}").Order(StringComparer.Ordinal);
        if (!wanted.SequenceEqual(found))
            faults.Add("the placements are not those asked for");
    }

    private static void JudgeInside(LayTask task, Marker marker, NetTopologySuite.Geometries.Geometry[] shapes, List<string> faults)
    {
        Envelope lay = new(0, marker.LayLength.Micrometers, 0, task.Surface.Depth.Micrometers);
        for (int i = 0; i < shapes.Length; i++)
        {
            if (!lay.Contains(shapes[i].EnvelopeInternal))
                faults.Add($"{marker.Placements[i].Piece.Name} lies outside: {shapes[i].EnvelopeInternal}");
        }
        if (shapes.Length > 0 && shapes.Max(shape => shape.EnvelopeInternal.MaxX) != marker.LayLength.Micrometers)
            faults.Add("the lay is longer than its placements");
    }

    private static void JudgeOverlaps(LayTask task, Marker marker, NetTopologySuite.Geometries.Geometry[] shapes, List<string> faults)
    {
        STRtree<int> tree = new();
        for (int i = 0; i < shapes.Length; i++)
            tree.Insert(shapes[i].EnvelopeInternal, i);
        for (int i = 0; i < shapes.Length; i++)
        {
            Envelope near = shapes[i].EnvelopeInternal.Copy();
            near.ExpandBy(task.Gap.Micrometers + 1);
            foreach (int j in tree.Query(near).Where(j => j > i))
            {
                // The judge counts in doubles: contact along a shared edge may show as a sliver far below a square micrometer per millimeter.
                if (shapes[i].Intersection(shapes[j]).Area > 1e-3 * shapes[i].Length)
                    faults.Add($"{marker.Placements[i].Piece.Name} overlaps {marker.Placements[j].Piece.Name}");
                if (shapes[i].Distance(shapes[j]) < task.Gap.Micrometers - 1e-3)
                    faults.Add($"{marker.Placements[i].Piece.Name} is too near to {marker.Placements[j].Piece.Name}");
            }
        }
    }

    private static void JudgeNap(LayTask task, Marker marker, List<string> faults)
    {
        foreach (IGrouping<string, int> group in Enumerable.Range(0, task.Demands.Length).Where(i => task.Demands[i].NapGroup.Length > 0).GroupBy(i => task.Demands[i].NapGroup))
        {
            if (group.Select(i => marker.Placements[i].Turn.Angle.TotalDegrees is > 90 and < 270).Distinct().Count() > 1)
                faults.Add($"size {group.Key} lies both ways");
        }
        for (int i = 0; i < task.Demands.Length; i++)
        {
            if (!task.Demands[i].Turns.Contains(marker.Placements[i].Turn))
                faults.Add($"{task.Demands[i].Piece.Name} may not lie at {marker.Placements[i].Turn}");
        }
    }

    private static void JudgeFolds(LayTask task, Marker marker, NetTopologySuite.Geometries.Geometry[] shapes, List<string> faults)
    {
        for (int i = 0; i < shapes.Length; i++)
        {
            if (marker.Placements[i].Contact != FoldContact.OnFold)
                continue;
            LineString fold = new GeometryFactory().CreateLineString([new(0, 0), new(marker.LayLength.Micrometers, 0)]);
            double foldLength = FoldLength(marker.Placements[i]);
            if (!task.Surface.HasFold || Math.Abs(shapes[i].Intersection(fold).Length - foldLength) > 1)
                faults.Add($"{marker.Placements[i].Piece.Name} does not lie on the fold");
        }
    }

    private static double FoldLength(Placement placement) =>
        Math.Abs(placement.Piece.FoldEdge!.End.X - (double)placement.Piece.FoldEdge.Start.X);
}
