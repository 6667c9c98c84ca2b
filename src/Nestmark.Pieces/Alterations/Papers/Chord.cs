using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A slash on its piece: which of the outline's two runs moves, and where a strip that is taken out ends.</summary>
/// <remarks>Runs are counted in ring points from the first edge's start.</remarks>
internal sealed record Chord
{
    private const double SlackMicrometers = 1;

    private readonly ImmutableArray<Vector> _ring;

    private Chord(Paper paper, string fromTag, string toTag)
    {
        Paper = paper;
        _ring = [.. paper.Places];
        ImmutableArray<PaperPoint> points = [.. paper.Ring];
        FromIndex = Enumerable.Range(0, points.Length).First(i => points[i].Tag.Contains(fromTag, StringComparison.Ordinal));
        ToIndex = Enumerable.Range(0, points.Length).First(i => points[i].Tag.Contains(toTag, StringComparison.Ordinal));
        FarFromIndex = FromIndex;
        FarToIndex = ToIndex;
        MovesLeft = !StaysLeft();
    }

    public Paper Paper { get; private init; }

    public int FromIndex { get; private init; }

    public int ToIndex { get; private init; }

    /// <summary>Where the moving run begins or ends beyond a strip at the slash's beginning; the same as the beginning without a strip.</summary>
    public int FarFromIndex { get; private init; }

    /// <summary>The same at the slash's end.</summary>
    public int FarToIndex { get; private init; }

    /// <summary>Whether the part that moves lies to the left, seen from the end of the slash to its beginning: the run from the beginning on.</summary>
    public bool MovesLeft { get; private init; }

    public Vector From => _ring[FromIndex];

    public Vector To => _ring[ToIndex];

    public double LengthMicrometers => (From - To).Norm;

    public static Chord Of(Paper paper, string fromTag, string toTag) => new(paper, fromTag, toTag);

    /// <summary>The side of the ring's segment from a point on.</summary>
    public PaperSide SideOfSegment(int index)
    {
        (int start, int farStart, int farEnd, int end) = MovesLeft
            ? (FromIndex, FarFromIndex, FarToIndex, ToIndex)
            : (ToIndex, FarToIndex, FarFromIndex, FromIndex);
        int at = After(start, index);
        if (at >= After(start, end))
            return PaperSide.Still;
        return at >= After(start, farStart) && at < After(start, farEnd) ? PaperSide.Moving : PaperSide.Gap;
    }

    /// <summary>The outline of one part, for telling which part a place lies in.</summary>
    public ImmutableArray<Point> MovingRing()
    {
        (int start, int end) = MovesLeft ? (FarFromIndex, FarToIndex) : (FarToIndex, FarFromIndex);
        return [.. Run(start, end).Select(place => place.Rounded())];
    }

    /// <summary>The outline of the moving part and the strip together.</summary>
    public ImmutableArray<Point> BeyondRing()
    {
        (int start, int end) = MovesLeft ? (FromIndex, ToIndex) : (ToIndex, FromIndex);
        return [.. Run(start, end).Select(place => place.Rounded())];
    }

    /// <summary>Whether the slash runs inside the piece between its ends.</summary>
    public bool IsInside()
    {
        Vector middle = 0.5 * (From + To);
        if (PointLocation.InRing([.. _ring.Select(place => place.Rounded())], middle.Rounded()) < 0)
            return false;
        Vector direction = (To - From).Unit;
        return !Enumerable.Range(0, _ring.Length).Any(i => Crosses(_ring[i], _ring[(i + 1) % _ring.Length], direction));
    }

    /// <summary>Whether the slash begins or ends inside the fold edge.</summary>
    public bool CutsFold() => Paper.Fold is { } fold
        && fold.Points.Skip(1).SkipLast(1).Any(point => point.Place == From || point.Place == To);

    /// <summary>The same slash with the strip up to the far line taken out; <c>null</c> where the strip reaches past the end of the moving part.</summary>
    public Chord? Far(SlashMove move)
    {
        bool isPivot = move.Shift == default;
        int[] run = [.. IndicesFrom(FromIndex, MovesLeft ? 1 : -1).Take(After(MovesLeft ? FromIndex : ToIndex, MovesLeft ? ToIndex : FromIndex) + 1)];
        if (Crossing(run, move.Far) is not { } atFrom)
            return null;
        Vector atTo = To;
        if (!isPivot)
        {
            if (Crossing([.. run.Reverse()], move.Far) is not { } other)
                return null;
            atTo = other;
        }
        Paper marked = isPivot ? Tagged(Paper, atFrom, "far from") : Tagged(Tagged(Paper, atFrom, "far from"), atTo, "far to");
        ImmutableArray<PaperPoint> points = [.. marked.Ring];
        int IndexOf(Vector place) => Enumerable.Range(0, points.Length).MinBy(i => (points[i].Place - place).Norm);
        return new Chord(this, marked)
        {
            FromIndex = IndexOf(From),
            ToIndex = IndexOf(To),
            FarFromIndex = IndexOf(atFrom),
            FarToIndex = IndexOf(atTo),
        };
    }

    private Chord(Chord chord, Paper marked)
    {
        Paper = marked;
        _ring = [.. marked.Places];
        MovesLeft = chord.MovesLeft;
    }

    private static Paper Tagged(Paper paper, Vector place, string tag)
    {
        int index = Enumerable.Range(0, paper.Edges.Length).MinBy(i => paper.Edges[i].DistanceMicrometers(place));
        return paper with { Edges = paper.Edges.SetItem(index, paper.Edges[index].WithPoint(place, point => point with { Tag = point.Tag + tag })) };
    }

    /// <summary>The first place along a run of ring points where it passes a line.</summary>
    private Vector? Crossing(int[] run, StraightLine line)
    {
        double startSide = line.SideOf(_ring[run[0]]);
        for (int i = 0; i + 1 < run.Length; i++)
        {
            double here = line.SideOf(_ring[run[i]]);
            double next = line.SideOf(_ring[run[i + 1]]);
            if (startSide * next < 0)
                return _ring[run[i]] + here / (here - next) * (_ring[run[i + 1]] - _ring[run[i]]);
        }
        return null;
    }

    private IEnumerable<int> IndicesFrom(int start, int step) =>
        Enumerable.Range(0, _ring.Length).Select(i => ((start + i * step) % _ring.Length + _ring.Length) % _ring.Length);

    /// <summary>The fold stays; without one the middle of the grainline; without one the larger part.</summary>
    private bool StaysLeft()
    {
        Point[] left = [.. Run(FromIndex, ToIndex).Select(place => place.Rounded())];
        if (Paper.Fold is { } fold)
        {
            Vector middle = 0.5 * (fold.Start + fold.End);
            return Nearness(Run(FromIndex, ToIndex), middle) < Nearness(Run(ToIndex, FromIndex), middle);
        }
        if (Paper.Grainline is var (start, end) && PointLocation.InRing([.. _ring.Select(place => place.Rounded())], (0.5 * (start + end)).Rounded()) > 0)
            return PointLocation.InRing(left, (0.5 * (start + end)).Rounded()) > 0;
        Point[] right = [.. Run(ToIndex, FromIndex).Select(place => place.Rounded())];
        return Polygon.TwiceSignedArea(left) > Polygon.TwiceSignedArea(right);
    }

    private static double Nearness(ImmutableArray<Vector> run, Vector place) =>
        run.Zip(run.Skip(1), (start, end) => (Nearest.OnSegment(start, end, place) - place).Norm).Min();

    private ImmutableArray<Vector> Run(int start, int end) => [.. IndicesFrom(start, 1).Take(After(start, end) + 1).Select(i => _ring[i])];

    private int After(int start, int index) => (index - start + _ring.Length) % _ring.Length;

    private bool Crosses(Vector start, Vector end, Vector direction)
    {
        double before = direction.Cross(start - From);
        double after = direction.Cross(end - From);
        if (before * after >= 0 || Math.Abs(before) < SlackMicrometers || Math.Abs(after) < SlackMicrometers)
            return false;
        double along = direction.Dot(start + before / (before - after) * (end - start) - From);
        return along > SlackMicrometers && along < LengthMicrometers - SlackMicrometers;
    }
}
