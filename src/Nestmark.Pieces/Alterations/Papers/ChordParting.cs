using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A cut along a slash; a strip or wedge up to a far line may be taken out beyond it.</summary>
internal sealed class ChordParting : IParting
{
    private readonly Chord _chord;
    private readonly SlashMove _move;
    private readonly ImmutableArray<Point> _moving;
    private readonly ImmutableArray<Point> _beyond;

    public ChordParting(Chord chord, SlashMove move, StraightLine? far)
    {
        _chord = chord;
        _move = move;
        _moving = chord.MovingRing();
        _beyond = chord.BeyondRing();
        StraightLine near = new(chord.To, (chord.From - chord.To).Unit);
        Cuts = far is { } line ? [near, line] : [near];
    }

    public ImmutableArray<StraightLine> Cuts { get; }

    public PaperSide SideOf(Vector place)
    {
        Point point = place.Rounded();
        if (PointLocation.InRing(_moving.AsSpan(), point) >= 0)
            return PaperSide.Moving;
        return Cuts.Length > 1 && PointLocation.InRing(_beyond.AsSpan(), point) > 0 ? PaperSide.Gap : PaperSide.Still;
    }

    public Vector Moved(Vector place) => _move.Apply(place);

    /// <summary>An edge that goes on past the pivot keeps its length, so it is left as cut.</summary>
    public bool IsTrued(PaperEdge edge) =>
        _move.Shift != default || !edge.Points.Skip(1).SkipLast(1).Any(point => point.Place == _chord.To);

    public ImmutableArray<(PaperPoint Point, PaperSide Side)> Parted(PaperEdge edge)
    {
        int first = _chord.Paper.Edges.TakeWhile(candidate => candidate.Name != edge.Name).Sum(candidate => candidate.Points.Length - 1);
        List<(PaperPoint Point, PaperSide Side)> parted = [];
        if (IsSlashEnd(edge.Start))
            parted.Add((edge.Points[0], PaperSide.Still));
        for (int i = 0; i + 1 < edge.Points.Length; i++)
        {
            PaperSide side = _chord.SideOfSegment(first + i);
            if (parted.Count == 0)
                parted.Add((edge.Points[i], side));
            else if (parted[^1].Side != side)
                Change(parted, edge.Points[i], side);
            parted.Add((edge.Points[i + 1], side));
        }
        if (IsSlashEnd(edge.End) && parted[^1].Side != PaperSide.Still)
            parted.Add((edge.Points[^1].Bare, PaperSide.Still));
        return [.. parted];
    }

    private bool IsSlashEnd(Vector corner) => corner == _chord.From || corner == _chord.To;

    /// <summary>At a change of parts the point stands once more for the new part; what stands on it goes with the part that is kept.</summary>
    private static void Change(List<(PaperPoint Point, PaperSide Side)> parted, PaperPoint point, PaperSide side)
    {
        if (parted[^1].Side == PaperSide.Gap)
        {
            parted[^1] = (point.Bare, PaperSide.Gap);
            parted.Add((point, side));
        }
        else
        {
            parted.Add((point.Bare, side));
        }
    }
}
