using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>Finds the closed outlines of a sheet among its lines: joins loose ends, keeps the outermost, and sorts what lies in each.</summary>
internal sealed class PdfOutlines
{
    private const double SmallestSideMillimeters = 15;
    private const long NearMicrometers = 3_000;
    private const long SameMicrometers = 100;
    private const int MostGapsTold = 10;

    private readonly List<(SubPath Run, ImmutableArray<Point> Points, Box Box)> _closed = [];
    private readonly List<SubPath> _rest = [];
    private readonly List<CurveSegment> _bridges = [];

    private PdfOutlines(PdfSheet sheet, IEnumerable<SubPath> runs, double? testSquareMillimeters)
    {
        List<SubPath> joined = RunJoining.Join(runs, PdfLimits.SilentGapMillimeters, _ => { });
        joined = RunJoining.Join(joined, PdfLimits.NotedGapMillimeters, _bridges.Add);
        foreach (SubPath run in joined)
        {
            bool isClosed = run.Form == SubPathForm.Closed || run.GapMillimeters <= PdfLimits.NotedGapMillimeters;
            bool isSquare = testSquareMillimeters is double side && DrawnBox.Rectangle(run) is (double first, double second)
                && Math.Abs(first / side - 1) < 0.01 && Math.Abs(second / side - 1) < 0.01;
            if (isSquare)
                continue;
            ImmutableArray<Point> points = [.. Flattening.Open(run.Segments)];
            Box box = Box.Around(points.AsSpan());
            if (isClosed && points.Length >= 3 && Math.Min(box.Width, box.Height) >= SmallestSideMillimeters * 1000 && !IsTwin(box) && _closed.Count < PdfLimits.MostOutlines)
                _closed.Add((run, points, box));
            else if (!isClosed || points.Length > 1)
                _rest.Add(run);
        }
        RemoveFrames(sheet);
    }

    /// <summary>The outlines of a sheet from the top, the left before the right.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="runs">Its chosen lines, at true size.</param>
    /// <param name="firstNumber">The number of the first outline.</param>
    /// <param name="testSquareMillimeters">Side of squares that are no pieces.</param>
    /// <param name="note">Gets a note for each wide gap that was closed.</param>
    /// <param name="leftOut">Gets in words what belongs to no outline.</param>
    public static ImmutableArray<PdfOutline> Of(PdfSheet sheet, IEnumerable<SubPath> runs, int firstNumber, double? testSquareMillimeters, Action<Fault> note, List<string> leftOut)
    {
        PdfOutlines found = new(sheet, runs, testSquareMillimeters);
        foreach (CurveSegment bridge in found._bridges.Take(MostGapsTold))
            note(PdfFaults.GapClosed((bridge.End - bridge.Start).NormMillimeters, PdfPieceMaking.PlaceText(sheet, bridge.Start.Rounded())));
        int[] outer = [.. Enumerable.Range(0, found._closed.Count).Where(i => !found._closed.Where((_, j) => j != i && found.Holds(j, i)).Any())
            .OrderByDescending(i => found._closed[i].Box.MaxY / 20_000).ThenBy(i => found._closed[i].Box.MinX).ThenBy(i => i)];
        HashSet<SubPath> used = new(ReferenceEqualityComparer.Instance);
        ImmutableArray<PdfOutline> outlines = [.. outer.Select((i, order) => found.Outline(sheet, i, firstNumber + order, used))];
        int stray = found._rest.Count(run => !used.Contains(run));
        if (stray > 0)
            leftOut.Add(string.Create(CultureInfo.InvariantCulture, $"{stray} open line{(stray == 1 ? "" : "s")} outside all pieces on {sheet.Name}"));
        return outlines;
    }

    private PdfOutline Outline(PdfSheet sheet, int index, int number, HashSet<SubPath> used)
    {
        (SubPath run, ImmutableArray<Point> points, Box box) = _closed[index];
        List<SubPath> inside = [];
        foreach (SubPath other in _rest.Concat(_closed.Where((_, j) => j != index).Select(closed => closed.Run)))
        {
            if (!BelongsTo(other, points, box))
                continue;
            inside.Add(other);
            used.Add(other);
        }
        IEnumerable<PdfWords> texts = sheet.Words.Where(words => Inside(words.Middle.Rounded(), points, box))
            .OrderByDescending(words => Math.Round(words.Middle.YMillimeters)).ThenBy(words => words.Middle.XMillimeters);
        return new PdfOutline(number, sheet, run, points, [.. texts], [.. inside]);
    }

    private static bool BelongsTo(SubPath run, ImmutableArray<Point> points, Box box)
    {
        (Point start, Point end, Point middle) = (run.Start.Rounded(), run.End.Rounded(), run.Segments[run.Segments.Length / 2].PointAt(0.5).Rounded());
        return Inside(middle, points, box) || (Reaches(start, box) && Distance(points, start) <= NearMicrometers) || (Reaches(end, box) && Distance(points, end) <= NearMicrometers);
    }

    private bool IsTwin(Box box) => _closed.Exists(other =>
        Math.Abs(other.Box.MinX - box.MinX) <= SameMicrometers && Math.Abs(other.Box.MinY - box.MinY) <= SameMicrometers
        && Math.Abs(other.Box.MaxX - box.MaxX) <= SameMicrometers && Math.Abs(other.Box.MaxY - box.MaxY) <= SameMicrometers);

    // A border around the page is an upright rectangle with other outlines in it.
    private void RemoveFrames(PdfSheet sheet)
    {
        for (int i = _closed.Count - 1; i >= 0; i--)
        {
            bool isLarge = DrawnBox.UprightRectangle(_closed[i].Run) is (double width, double height) && width >= 0.8 * sheet.WidthMillimeters && height >= 0.8 * sheet.HeightMillimeters;
            if (isLarge && Enumerable.Range(0, _closed.Count).Any(j => j != i && Holds(i, j)))
                _closed.RemoveAt(i);
        }
    }

    private bool Holds(int outer, int inner) =>
        _closed[outer].Box is Box box && box.MinX <= _closed[inner].Box.MinX && box.MaxX >= _closed[inner].Box.MaxX
        && box.MinY <= _closed[inner].Box.MinY && box.MaxY >= _closed[inner].Box.MaxY
        && Inside(_closed[inner].Points[_closed[inner].Points.Length / 2], _closed[outer].Points, box);

    private static bool Reaches(Point point, Box box) =>
        point.X >= box.MinX - NearMicrometers && point.X <= box.MaxX + NearMicrometers && point.Y >= box.MinY - NearMicrometers && point.Y <= box.MaxY + NearMicrometers;

    private static double Distance(ImmutableArray<Point> points, Point point)
    {
        double least = double.MaxValue;
        for (int i = 0; i < points.Length; i++)
            least = Math.Min(least, (PointLocation.NearestOnSegment(points[i], points[(i + 1) % points.Length], point) - point).NormMicrometers);
        return least;
    }

    /// <summary>Even-odd, good enough to tell where a text or line belongs.</summary>
    private static bool Inside(Point point, ImmutableArray<Point> ring, Box box)
    {
        if (point.X < box.MinX || point.X > box.MaxX || point.Y < box.MinY || point.Y > box.MaxY)
            return false;
        bool inside = false;
        for (int i = 0; i < ring.Length; i++)
        {
            (Point start, Point end) = (ring[i], ring[(i + 1) % ring.Length]);
            if (start.Y > point.Y == end.Y > point.Y)
                continue;
            double ratio = (double)(point.Y - start.Y) / (end.Y - start.Y);
            if (start.X + ratio * (end.X - start.X) > point.X)
                inside = !inside;
        }
        return inside;
    }
}
