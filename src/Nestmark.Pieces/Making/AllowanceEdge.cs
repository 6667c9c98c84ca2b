using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>One edge of the seam line with its allowance: where its cut edge runs between the two corners.</summary>
internal sealed class AllowanceEdge
{
    private readonly ImmutableArray<Vector> _seam;

    /// <param name="edge">Two points or more, no two neighbors equal.</param>
    /// <param name="rules">For its bends.</param>
    public AllowanceEdge(LaidEdge edge, JoinRules rules)
    {
        _seam = [.. edge.Points.Select(Vector.Of)];
        Width = edge.Width.Micrometers;
        Ends = edge.Ends;
        Kind = edge.Kind;
        Inner = [.. Enumerable.Range(1, _seam.Length - 2).SelectMany(i => Bend.Between(_seam[i - 1], _seam[i], _seam[i + 1], Width, rules))];
    }

    /// <summary>Allowance in micrometers.</summary>
    public double Width { get; }

    public AllowanceEnds Ends { get; }

    public EdgeKind Kind { get; }

    /// <summary>The cut edge without its two ends.</summary>
    public ImmutableArray<Vector> Inner { get; }

    /// <summary>The edge as seen from the corner where it starts.</summary>
    public AllowanceSide AtStart()
    {
        Vector along = _seam[1] - _seam[0];
        return new AllowanceSide(this)
        {
            Corner = _seam[0],
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
            Corner = _seam[^1],
            Along = along.Unit,
            Outward = -along.Unit.Right,
            SegmentMicrometers = along.Norm,
            Inner = [.. Inner.Reverse()],
            FarFoot = _seam[0] + Width * (_seam[1] - _seam[0]).Unit.Right,
        };
    }
}
