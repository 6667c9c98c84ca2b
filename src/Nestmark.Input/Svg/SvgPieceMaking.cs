using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Outlines;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input.Svg;

/// <summary>Sorts the shapes of a piece by role: one closed outline, and lines and marks.</summary>
internal sealed class SvgPieceMaking(XElement piece, string item, SvgProblems problems)
{
    private static readonly Length CornerReach = Length.FromMillimeters(1);
    private bool _isBroken;

    /// <summary>The piece, or <c>null</c> after problems.</summary>
    public DrawnPiece? Make(List<SvgShape> shapes)
    {
        List<SvgShape> outlines = OutlineShapes(shapes);
        foreach (SvgShape left in shapes.Where(shape => shape.Role == SvgRole.None).Except(outlines))
            problems.Add(Severity.Note, left.Element, item, SvgFaults.NoRole(left.Element.Name.LocalName));
        ImmutableArray<OutlineVertex>? outline = Outline(outlines);
        Segment? grainline = Single(shapes, SvgRole.Grain);
        Segment? foldLine = Single(shapes, SvgRole.Fold);
        if (_isBroken || outline is null)
            return null;
        ImmutableArray<OutlineVertex> vertices = WithCorners(outline.Value, shapes);
        DrawnPiece drawn = new(vertices)
        {
            Grainline = grainline,
            FoldLine = foldLine,
            Notches = [.. Of(shapes, SvgRole.Notch).Select(shape => new PieceMark(shape.Label, PlaceNear(shape, vertices)))],
            Lines = [.. Of(shapes, SvgRole.Line).SelectMany(LinesOf)],
            Marks = [.. Of(shapes, SvgRole.Mark).Select(shape => new PieceMark(shape.Label, Middle(shape)))],
        };
        return _isBroken ? null : drawn;
    }

    /// <summary>A place in words: millimeters from the drawing's top left, as editors show it.</summary>
    internal static string PlaceText(Point point) => NumbersText(point) + " mm from the drawing's top left";

    private static string NumbersText(Point point) =>
        string.Create(CultureInfo.InvariantCulture, $"{point.XMillimeters:0.0}, {-point.YMillimeters:0.0}");

    private static IEnumerable<SvgShape> Of(List<SvgShape> shapes, SvgRole role) => shapes.Where(shape => shape.Role == role);

    /// <summary>Shapes said to be the outline; otherwise the closed shapes that are said to be nothing.</summary>
    private static List<SvgShape> OutlineShapes(List<SvgShape> shapes)
    {
        List<SvgShape> said = [.. Of(shapes, SvgRole.Outline)];
        if (said.Count > 0)
            return said;
        List<SvgShape> unsaid = [.. Of(shapes, SvgRole.None)];
        List<SvgShape> closed = [.. unsaid.Where(shape => shape.SubPaths.Any(IsNearlyClosed))];
        return closed.Count > 0 ? closed : unsaid;
    }

    private static bool IsNearlyClosed(SubPath run) => run.Form == SubPathForm.Closed || run.GapMillimeters <= SvgLimits.NotedGapMillimeters;

    private ImmutableArray<OutlineVertex>? Outline(List<SvgShape> shapes)
    {
        if (shapes.Count == 0)
            return Fail(piece, SvgFaults.NoShapes());
        XElement about = shapes[0].Element;
        List<SubPath> runs = RunJoining.Join(shapes.SelectMany(shape => shape.SubPaths), SvgLimits.NotedGapMillimeters, bridge => NoteGap(about, bridge));
        if (runs.Count > 1)
            runs = WithoutTwins(runs, shapes[^1].Element);
        if (runs.Count > 1)
            return Fail(shapes.Count == 1 ? about : piece, Several(shapes, runs));
        SubPath run = runs[0];
        if (!IsNearlyClosed(run))
            return Fail(about, SvgFaults.OpenOutline(run.GapMillimeters, NumbersText(run.Start.Rounded()), PlaceText(run.End.Rounded())));
        return Mended(about, run);
    }

    private ImmutableArray<OutlineVertex>? Mended(XElement about, SubPath run)
    {
        ImmutableArray<OutlineVertex> vertices = Flattening.Closed(run.Segments);
        if (run.Form == SubPathForm.Open && run.GapMillimeters > SvgLimits.SilentGapMillimeters)
            NoteGap(about, new StraightSegment(run.End, run.Start));
        else if (vertices.Length > 3 && run.Start != run.End)
            vertices = vertices.RemoveAt(vertices.Length - 1);
        MendedOutline mended = OutlineMending.Mend(vertices, PlaceText);
        foreach (Finding finding in mended.Findings)
        {
            problems.Add(finding.Severity, about, item, finding.Fault);
            _isBroken |= finding.Severity == Severity.Error;
        }
        return mended.Vertices.IsDefault ? null : mended.Vertices;
    }

    private void NoteGap(XElement about, CurveSegment bridge)
    {
        double gap = (bridge.End - bridge.Start).NormMillimeters;
        problems.Add(Severity.Note, about, item, SvgFaults.GapClosed(gap, PlaceText(bridge.Start.Rounded())));
    }

    private static Fault Several(List<SvgShape> shapes, List<SubPath> runs) => SvgFaults.SeveralOutlines(shapes.Count == 1
        ? string.Create(CultureInfo.InvariantCulture, $"{runs.Count} rings in one {shapes[0].Element.Name.LocalName}")
        : Spelling.ListOf([.. shapes.Select(Described)]));

    private static string Described(SvgShape shape)
    {
        string id = shape.Element.Attribute("id")?.Value is string value ? " #" + Quantities.QuantityFaults.Shown(value) : "";
        int line = ((System.Xml.IXmlLineInfo)shape.Element).LineNumber;
        return string.Create(CultureInfo.InvariantCulture, $"{shape.Element.Name.LocalName}{id} on line {line}");
    }

    /// <summary>The runs without those that lie on an earlier one: same box and same area within a thousandth.</summary>
    private List<SubPath> WithoutTwins(List<SubPath> runs, XElement last)
    {
        List<(SubPath Run, Box Box, double Area)> kept = [];
        foreach (SubPath run in runs)
        {
            ImmutableArray<Point> points = [.. Flattening.Closed(run.Segments).Select(vertex => vertex.Point)];
            Box box = Box.Around(points.AsSpan());
            double area = Math.Abs((double)Polygon.TwiceSignedArea(points.AsSpan()));
            if (!kept.Exists(other => IsSame(other.Box, box) && Math.Abs(other.Area - area) <= 0.001 * area))
                kept.Add((run, box, area));
        }
        if (kept.Count == 1)
            problems.Add(Severity.Note, last, item, SvgFaults.Twin());
        return [.. kept.Select(one => one.Run)];
    }

    private static bool IsSame(Box left, Box right)
    {
        const long near = 100;
        return Math.Abs(left.MinX - right.MinX) <= near && Math.Abs(left.MinY - right.MinY) <= near
            && Math.Abs(left.MaxX - right.MaxX) <= near && Math.Abs(left.MaxY - right.MaxY) <= near;
    }

    private Segment? Single(List<SvgShape> shapes, SvgRole role)
    {
        List<SvgShape> found = [.. Of(shapes, role)];
        if (found.Count == 0)
            return null;
        if (found.Count > 1)
            Fail(found[1].Element, SvgFaults.SecondOne(SvgRoles.NameOf(role)));
        SubPath run = found[0].SubPaths[0];
        (Point start, Point end) = (run.Start.Rounded(), run.End.Rounded());
        if (start.DistanceTo(end) >= CornerReach)
            return new Segment(start, end);
        Fail(found[0].Element, SvgFaults.NotALine(SvgRoles.NameOf(role)));
        return null;
    }

    private static IEnumerable<PieceLine> LinesOf(SvgShape shape) => shape.SubPaths
        .Select(run => new PieceLine(shape.Label, Flattening.Open(run.Segments)))
        .Where(line => line.Points.Length > 1);

    /// <summary>Of an open shape the end nearest to the outline; of a closed one its middle.</summary>
    private static Point PlaceNear(SvgShape shape, ImmutableArray<OutlineVertex> outline)
    {
        SubPath run = shape.SubPaths[0];
        if (IsNearlyClosed(run))
            return Middle(shape);
        (Point start, Point end) = (run.Start.Rounded(), run.End.Rounded());
        return OutlineDistance.Nearest(outline, start).Distance <= OutlineDistance.Nearest(outline, end).Distance ? start : end;
    }

    /// <summary>The center of a circle, else the middle of the smallest upright box.</summary>
    private static Point Middle(SvgShape shape)
    {
        if (shape.SubPaths is [{ Segments: [ArcSegment arc] }])
            return arc.Center.Rounded();
        Box box = Box.Around([.. shape.SubPaths.SelectMany(run => Flattening.Open(run.Segments))]);
        return new Point((box.MinX + box.MaxX) / 2, (box.MinY + box.MaxY) / 2);
    }

    private ImmutableArray<OutlineVertex> WithCorners(ImmutableArray<OutlineVertex> outline, List<SvgShape> shapes)
    {
        foreach (SvgShape corner in Of(shapes, SvgRole.Corner))
        {
            Point place = PlaceNear(corner, outline);
            OutlineDistance nearest = OutlineDistance.Nearest(outline, place);
            if (nearest.Distance > CornerReach)
                Fail(corner.Element, SvgFaults.CornerAway(PlaceText(place)));
            else
                outline = nearest.Marked(outline);
        }
        return outline;
    }

    private ImmutableArray<OutlineVertex>? Fail(XElement about, Fault fault)
    {
        _isBroken = true;
        problems.Error(about, item, fault);
        return null;
    }
}
