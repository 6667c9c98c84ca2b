using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>The raw ring around a seam line: each edge set off by its width, corners joined. It may cross itself.</summary>
internal sealed class AllowanceRing
{
    /// <summary>A ring with fewer stations is cleaned up whole.</summary>
    private const int StationsWorthDividing = 64;

    private readonly ImmutableArray<RingStation> _stations;

    private AllowanceRing(ImmutableArray<RingStation> stations) => _stations = stations;

    /// <summary>All points in order.</summary>
    public IEnumerable<Vector> Points => _stations.SelectMany(station => station.Points);

    /// <summary>The ring of a seam line.</summary>
    /// <param name="laid">Counter-clockwise around a simple seam line.</param>
    /// <param name="plan">Its fold and limit count.</param>
    /// <param name="faults">Receives what is to be said about corners.</param>
    public static AllowanceRing Around(ImmutableArray<LaidEdge> laid, LayingPlan plan, ICollection<PieceFault> faults)
    {
        ImmutableArray<AllowanceEdge> edges = [.. laid.Select(edge => new AllowanceEdge(edge, plan.PointLimitRatio))];
        ImmutableArray<AllowanceSide> starts = [.. edges.Select(edge => edge.AtStart())];
        ImmutableArray<AllowanceSide> ends = [.. edges.Select(edge => edge.AtEnd())];
        ImmutableArray<AllowanceSide> arriving = [ends[^1], .. ends[..^1]];
        List<CornerJoin> joins = [];
        for (int i = 0; i < edges.Length; i++)
        {
            joins.Add(CornerJoin.Between(arriving[i], starts[i], plan.PointLimitRatio));
            if (PieceFaults.OfCorner(joins[i].Outcome, plan.IsTurnedOver ? laid[i].To : laid[i].From) is PieceFault fault)
                faults.Add(fault);
        }
        return new AllowanceRing([.. edges.SelectMany((edge, i) =>
            edge.StationsWithout(starts[i].Dropped, ends[i].Dropped).Prepend(joins[i].StationAt(arriving[i], starts[i])))]);
    }

    /// <summary>
    /// The ring in parts, each closed along the seam line: the winding number of the ring is the sum of theirs and the seam line's, and none of theirs
    /// is below zero, so what the ring encloses is the union of the seam line and of what the parts enclose. A short ring, and one that cannot be divided, is one part.
    /// </summary>
    public IEnumerable<ImmutableArray<Vector>> Parts()
    {
        int[] cuts = _stations.Length < StationsWorthDividing ? [] : [.. Enumerable.Range(0, _stations.Length).Where(i => _stations[i].Feet is not null)];
        return cuts.Length < 2 ? [[.. Points]] : cuts.Select((cut, i) => Part(cut, i + 1 < cuts.Length ? cuts[i + 1] : cuts[0] + _stations.Length));
    }

    /// <summary>Out to the cut edge at one station, along it to another, and back along the seam line.</summary>
    private ImmutableArray<Vector> Part(int from, int to)
    {
        RingStation first = _stations[from];
        RingStation last = _stations[to % _stations.Length];
        IEnumerable<RingStation> between = Enumerable.Range(from + 1, to - from - 1).Select(i => _stations[i % _stations.Length]);
        // A station that passes through the seam line is done there; what follows belongs to the next part.
        IEnumerable<Vector> end = last.Points.Contains(last.Seam) ? [] : [.. last.Points, last.Feet!.Value.After];
        return
        [
            first.Seam, first.Feet!.Value.After, .. between.SelectMany(station => station.Points),
            last.Feet!.Value.Before, .. end, last.Seam, .. between.Reverse().Select(station => station.Seam),
        ];
    }
}
