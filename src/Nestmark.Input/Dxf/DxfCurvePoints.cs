using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>Turn points and curve points of a ring: which vertices are corners, and smooth curves where only curve points are given.</summary>
/// <remarks>
/// A fitted curve must pass through all curve points (ASTM D6963-04 as references/formats.md 1.2 tells it). Between two turn points the line is
/// replaced by a smooth curve only if every vertex there is a curve point; other vertices there were made by the writer and are the curve already.
/// </remarks>
internal sealed class DxfCurvePoints
{
    private const long CellMicrometers = 100;
    private const double NearMicrometers = 50;
    private const int Wrapped = 4;
    private readonly DxfKind _kind;
    private readonly Dictionary<(long, long), List<Point>> _turns;
    private readonly Dictionary<(long, long), List<Point>> _curves;

    public DxfCurvePoints(DxfPiece piece)
    {
        _kind = piece.Kind;
        _turns = Cells(piece.TurnPoints);
        _curves = Cells(piece.CurvePoints);
    }

    /// <summary>Vertices of a closed run, the curves flattened.</summary>
    public ImmutableArray<OutlineVertex> Vertices(SubPath run, Action<Fault> note)
    {
        bool hasMarks = run.Segments.Any(segment => IsAt(_turns, segment.Start) || IsAt(_curves, segment.Start));
        ImmutableArray<CurveSegment> segments = hasMarks ? Fitted(run.Segments, note) : run.Segments;
        ImmutableArray<OutlineVertex> vertices = Flattening.Closed(segments);
        return hasMarks ? [.. vertices.Select(Kinded)] : vertices;
    }

    private OutlineVertex Kinded(OutlineVertex vertex)
    {
        if (vertex.Kind != VertexKind.Joint)
            return vertex;
        VertexKind otherwise = _kind == DxfKind.Pattern ? VertexKind.Curve : VertexKind.Joint;
        return vertex with { Kind = IsAt(_turns, vertex.Point) ? VertexKind.Marked : otherwise };
    }

    private ImmutableArray<CurveSegment> Fitted(ImmutableArray<CurveSegment> segments, Action<Fault> note)
    {
        int first = Enumerable.Range(0, segments.Length).FirstOrDefault(i => IsAt(_turns, segments[i].Start), -1);
        List<CurveSegment> turned = first < 0 ? [.. segments] : [.. segments[first..], .. segments[..first]];
        ImmutableArray<CurveSegment>.Builder fitted = ImmutableArray.CreateBuilder<CurveSegment>();
        (int runs, double bow) = (0, 0.0);
        for (int start = 0; start < turned.Count;)
        {
            int end = start + 1;
            while (end < turned.Count && !IsAt(_turns, turned[end].Start))
                end++;
            List<CurveSegment> part = turned[start..end];
            bool onlyCurvePoints = part.Count > 1 && part.TrueForAll(segment => segment is StraightSegment)
                && part.Skip(first < 0 ? 0 : 1).All(segment => IsAt(_curves, segment.Start));
            ImmutableArray<CurveSegment> smooth = !onlyCurvePoints ? [] : first < 0 ? Round(part) : FittedCurve.Through([part[0].Start, .. part.Select(segment => segment.End)]);
            fitted.AddRange(smooth.Length == part.Count ? smooth : part);
            runs += smooth.Length == part.Count ? 1 : 0;
            bow = Math.Max(bow, smooth.Select(BowOf).DefaultIfEmpty().Max());
            start = end;
        }
        if (bow > Flattening.ToleranceMillimeters)
            note(DxfFaults.FittedRuns(runs, bow));
        return fitted.ToImmutable();
    }

    /// <summary>A curve that closes without a kink: fitted past both its ends and cut there.</summary>
    private static ImmutableArray<CurveSegment> Round(List<CurveSegment> part)
    {
        int wrapped = Math.Min(Wrapped, part.Count);
        CurvePoint[] points = [.. part.TakeLast(wrapped).Select(segment => segment.Start), .. part.Select(segment => segment.Start), .. part.Take(wrapped + 1).Select(segment => segment.Start)];
        ImmutableArray<CurveSegment> smooth = FittedCurve.Through(points);
        return smooth.Length == points.Length - 1 ? smooth.Slice(wrapped, part.Count) : [];
    }

    private static double BowOf(CurveSegment segment)
    {
        CurvePoint middle = segment.PointAt(0.5);
        return (middle - (segment.Start + segment.End) * 0.5).NormMillimeters;
    }

    private static Dictionary<(long, long), List<Point>> Cells(IEnumerable<CurvePoint> places)
    {
        Dictionary<(long, long), List<Point>> cells = [];
        foreach (Point point in places.Select(place => place.Rounded()))
        {
            (long, long) cell = (Cell(point.X), Cell(point.Y));
            if (!cells.TryGetValue(cell, out List<Point>? list))
                cells.Add(cell, list = []);
            if (!list.Contains(point) && list.Count < 100)
                list.Add(point);
        }
        return cells;
    }

    private static long Cell(long micrometers) => (long)Math.Floor(micrometers / (double)CellMicrometers);

    private static bool IsAt(Dictionary<(long, long), List<Point>> cells, CurvePoint place) => IsAt(cells, place.Rounded());

    private static bool IsAt(Dictionary<(long, long), List<Point>> cells, Point point)
    {
        for (int i = 0; i < 9 && cells.Count > 0; i++)
        {
            if (cells.TryGetValue((Cell(point.X) + i % 3 - 1, Cell(point.Y) + i / 3 - 1), out List<Point>? list)
                && list.Exists(other => (other - point).NormMicrometers <= NearMicrometers))
                return true;
        }
        return false;
    }
}
