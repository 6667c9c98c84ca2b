using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Outlines;
using Nestmark.Input.Svg;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input.Pdf;

/// <summary>Makes a piece of a closed outline: short lines on it are notches, the line beside the word grain is the grainline, the rest is drawn and not cut.</summary>
internal static class PdfPieceMaking
{
    private const double LongestNotchMillimeters = 12;
    private const double LongestMarkMillimeters = 15;
    private const double ShortestGrainMillimeters = 30;
    private const double GrainWordMillimeters = 25;
    private static readonly Length OnOutline = Length.FromMillimeters(1);

    /// <summary>The piece; <c>null</c> when the outline cannot be mended.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="report">Gets what was mended or stands in the way.</param>
    public static DrawnPiece? Make(PdfOutline outline, Action<Severity, Fault> report)
    {
        SubPath run = outline.Run;
        ImmutableArray<OutlineVertex> vertices = Flattening.Closed(run.Segments);
        if (run.GapMillimeters > PdfLimits.SilentGapMillimeters)
            report(Severity.Note, PdfFaults.GapClosed(run.GapMillimeters, PlaceText(outline.Sheet, run.End.Rounded())));
        else if (vertices.Length > 3 && run.Start != run.End)
            vertices = vertices.RemoveAt(vertices.Length - 1);
        MendedOutline mended = OutlineMending.Mend(vertices, point => PlaceText(outline.Sheet, point));
        foreach (Finding finding in mended.Findings)
            report(finding.Severity, finding.Fault);
        if (mended.Vertices.IsDefault)
            return null;
        SubPath? grain = GrainOf(outline);
        if (grain is null)
            report(Severity.Note, PdfFaults.NoGrain(outline.Name));
        ILookup<Kind, SubPath> lines = outline.Inside.Where(line => line != grain).ToLookup(line => KindOf(line, mended.Vertices));
        return new DrawnPiece(mended.Vertices)
        {
            Grainline = grain is null ? null : Upward(grain.Start.Rounded(), grain.End.Rounded()),
            Notches = [.. lines[Kind.Notch].Select(line => new PieceMark("", OnOutlineEnd(line, mended.Vertices)))],
            Lines = [.. lines[Kind.Line].Select(line => new PieceLine("", Flattening.Open(line.Segments))).Where(line => line.Points.Length > 1)],
            Marks = [.. lines[Kind.Mark].Select(line => new PieceMark("", Middle(line)))],
        };
    }

    /// <summary>A place in words.</summary>
    public static string PlaceText(PdfSheet sheet, Point point) => string.Create(
        CultureInfo.InvariantCulture, $"{point.XMillimeters:0.0}, {point.YMillimeters:0.0} mm from the lowest left of {sheet.Name}");

    private enum Kind
    {
        Line,
        Notch,
        Mark,
    }

    private static Kind KindOf(SubPath line, ImmutableArray<OutlineVertex> outline)
    {
        Box box = Box.Around([.. Flattening.Open(line.Segments)]);
        double size = Math.Max(box.Width, box.Height) / 1000.0;
        bool isClosed = line.Form == SubPathForm.Closed || line.GapMillimeters <= PdfLimits.SilentGapMillimeters;
        if (isClosed)
            return size <= LongestMarkMillimeters ? Kind.Mark : Kind.Line;
        return size <= LongestNotchMillimeters && OutlineDistance.Nearest(outline, OnOutlineEnd(line, outline)).Distance <= OnOutline ? Kind.Notch : Kind.Line;
    }

    /// <summary>The straight line nearest to a text with the word grain, if one is near enough.</summary>
    private static SubPath? GrainOf(PdfOutline outline)
    {
        SubPath? found = null;
        double least = GrainWordMillimeters;
        foreach (PdfWords words in outline.Texts.Where(words => words.Text.Contains("grain", StringComparison.OrdinalIgnoreCase)))
        {
            foreach (SubPath line in outline.Inside.Where(IsLongAndStraight))
            {
                Point middle = words.Middle.Rounded();
                double distance = (PointLocation.NearestOnSegment(line.Start.Rounded(), line.End.Rounded(), middle) - middle).NormMicrometers / 1000;
                if (distance < least)
                    (found, least) = (line, distance);
            }
        }
        return found;
    }

    // A line across a join of two pages comes in several parts.
    private static bool IsLongAndStraight(SubPath line) =>
        line.Segments.All(segment => segment is StraightSegment) && line.GapMillimeters >= ShortestGrainMillimeters
        && line.Segments.Sum(segment => (segment.End - segment.Start).NormMillimeters) <= line.GapMillimeters + 0.01;

    /// <summary>The head is not known from the line; it is taken to be the upper end, or the right one.</summary>
    private static Segment Upward(Point start, Point end) =>
        end.Y > start.Y || (end.Y == start.Y && end.X > start.X) ? new Segment(start, end) : new Segment(end, start);

    private static Point OnOutlineEnd(SubPath line, ImmutableArray<OutlineVertex> outline)
    {
        (Point start, Point end) = (line.Start.Rounded(), line.End.Rounded());
        return OutlineDistance.Nearest(outline, start).Distance <= OutlineDistance.Nearest(outline, end).Distance ? start : end;
    }

    private static Point Middle(SubPath line)
    {
        Box box = Box.Around([.. Flattening.Open(line.Segments)]);
        return new Point((box.MinX + box.MaxX) / 2, (box.MinY + box.MaxY) / 2);
    }
}
