using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>One edge of the seam line with its allowance: where its cut edge runs between the two corners.</summary>
internal sealed class AllowanceEdge
{
    private readonly ImmutableArray<Vector> _seam;
    private readonly ImmutableArray<RingStation> _bends;

    /// <param name="edge">Two points or more, no two neighbors equal.</param>
    /// <param name="pointLimitRatio">For its bends; 1 or more.</param>
    public AllowanceEdge(LaidEdge edge, double pointLimitRatio)
    {
        _seam = [.. edge.Points.Select(Vector.Of)];
        Width = edge.Width.Micrometers;
        Ends = edge.Ends;
        Kind = edge.Kind;
        _bends = [.. Enumerable.Range(1, _seam.Length - 2).Select(i => Bend.Between(_seam[i - 1], _seam[i], _seam[i + 1], Width, pointLimitRatio))];
        Inner = [.. _bends.SelectMany(bend => bend.Points)];
    }

    /// <summary>Allowance in micrometers.</summary>
    public double Width { get; }

    public AllowanceEnds Ends { get; }

    public EdgeKind Kind { get; }

    /// <summary>The cut edge without its two ends.</summary>
    public ImmutableArray<Vector> Inner { get; }

    /// <summary>The bends, without the points of <see cref="Inner"/> that the corners at both ends have cut away.</summary>
    public IEnumerable<RingStation> StationsWithout(int droppedAtStart, int droppedAtEnd)
    {
        int first = 0;
        foreach (RingStation bend in _bends)
        {
            yield return bend.Within(first, droppedAtStart, Inner.Length - droppedAtEnd);
            first += bend.Points.Length;
        }
    }

    /// <summary>The edge as seen from the corner where it starts.</summary>
    public AllowanceSide AtStart()
    {
        Vector along = _seam[1] - _seam[0];
        return new AllowanceSide(this)
        {
            SeamLine = _seam,
            Along = along.Unit,
            Outward = along.Unit.Right,
            SegmentMicrometers = along.Norm,
            Inner = Inner,
            FarFoot = _seam[^1] + Width * (_seam[^1] - _seam[^2]).Unit.Right,
        };
    }

    /// <summary>The edge as seen from the corner where it ends.</summary>
    public AllowanceSide AtEnd()
    {
        Vector along = _seam[^2] - _seam[^1];
        return new AllowanceSide(this)
        {
            SeamLine = [.. _seam.Reverse()],
            Along = along.Unit,
            Outward = -along.Unit.Right,
            SegmentMicrometers = along.Norm,
            Inner = [.. Inner.Reverse()],
            FarFoot = _seam[0] + Width * (_seam[1] - _seam[0]).Unit.Right,
        };
    }
}
