using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Outlines;
using Nestmark.Input.Svg;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input.Dxf;

/// <summary>Makes a piece as a job wants it: one outline, its lines and marks, half or whole.</summary>
internal sealed class DxfPieceMaking(DxfPiece piece, PieceWish wish, DxfProblems problems)
{
    private const int MostMarks = 5_000;
    private static readonly Regex Quantity = new(@"^\s*([0-9]{1,6})\s*(?:,\s*([0-9]{1,6}))?\s*$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);
    private readonly string _item = "#" + Quantities.QuantityFaults.Shown(piece.Name);
    private bool _isBroken;

    /// <summary>The piece, or <c>null</c> after problems.</summary>
    public DrawnPiece? Make()
    {
        if (piece.Notches.Count + piece.Marks.Count + piece.Lines.Count > MostMarks)
            Fail(DxfFaults.TooMuch($"{MostMarks} marks and lines on one piece"));
        (SubPath? run, OutlineMeaning? meaning) = _isBroken ? (null, null) : ChooseOutline();
        if (run is null || Mended(new DxfCurvePoints(piece).Vertices(run, Note)) is not ImmutableArray<OutlineVertex> outline)
            return null;
        DrawnPiece drawn = Halved(new DrawnPiece(outline)
        {
            Meaning = meaning,
            DrawnAt = string.Create(CultureInfo.InvariantCulture, $":{piece.Line}"),
            Grainline = Single(piece.Grainlines, "grainline"),
            Notches = [.. piece.Notches.Select(notch => new PieceMark(notch.Label, NotchPlace(notch.Places, outline)))],
            Marks = [.. piece.Marks.Select(mark => new PieceMark(mark.Label, mark.Place.Rounded()))],
            Lines = [.. Lines(meaning)],
            Said = Said(),
        });
        Remark();
        return _isBroken ? null : drawn;
    }

    private (SubPath? Run, OutlineMeaning? Meaning) ChooseOutline()
    {
        bool isPattern = piece.Kind == DxfKind.Pattern;
        if (!isPattern)
            return (OneRing(piece.Boundary), wish.Line);
        if (wish.Line == OutlineMeaning.SeamLine)
        {
            (List<SubPath> closed, List<SubPath> open) = DxfRings.Of(piece.SewLines, _ => { });
            if (closed.Count > 0)
                return (OneRing(closed), OutlineMeaning.SeamLine);
            if (open.Count == 1 && piece.MirrorLines.Count > 0 && open[0].Segments.Length > 1)
                return (OneRing([new SubPath([.. open[0].Segments, new StraightSegment(open[0].End, open[0].Start)], SubPathForm.Closed)]), OutlineMeaning.SeamLine);
            Note(DxfFaults.BoundaryForSeamLine());
            return (OneRing(piece.Boundary), OutlineMeaning.SeamLine);
        }
        if (wish.Line is null)
            Note(DxfFaults.TakenForCuttingLine());
        return (OneRing(piece.Boundary), OutlineMeaning.CuttingLine);
    }

    private SubPath? OneRing(List<SubPath> runs)
    {
        if (runs.Count == 0)
            return Fail(DxfFaults.NoBoundary());
        if (!runs.TrueForAll(DxfRings.IsWithinBounds))
            return Fail(DxfFaults.TooMuch($"{DxfLimits.MostOutlinePoints} points in an outline"));
        (List<SubPath> closed, List<SubPath> open) = DxfRings.Of(runs, Note);
        if (closed.Count == 0)
            return Fail(DxfFaults.OpenOutline(open[0].GapMillimeters, DxfRings.PlaceText(open[0].End.Rounded())));
        List<DxfRing> rings = DxfRings.WithoutTwins(closed, out int twins);
        if (twins > 0)
            Note(DxfFaults.Twins(twins));
        DxfRing largest = rings.MaxBy(ring => ring.Area)!;
        if (!rings.TrueForAll(ring => largest.BoundsHold(ring.Bounds)))
            return Fail(DxfFaults.SeveralOutlines(rings.Count));
        foreach (SubPath inner in rings.Where(ring => ring != largest).Select(ring => ring.Run).Concat(open))
            piece.Lines.Add(("", inner));
        if (rings.Count > 1)
            Note(DxfFaults.InnerOutlines(rings.Count - 1));
        return largest.Run;
    }

    private ImmutableArray<OutlineVertex>? Mended(ImmutableArray<OutlineVertex> vertices)
    {
        MendedOutline mended = OutlineMending.Mend(vertices, DxfRings.PlaceText);
        foreach (Finding finding in mended.Findings)
        {
            problems.Add(finding.Severity, piece.Line, _item, finding.Fault);
            _isBroken |= finding.Severity == Severity.Error;
        }
        return mended.Vertices.IsDefault ? null : mended.Vertices;
    }

    private DrawnPiece Halved(DrawnPiece drawn)
    {
        if (Single(piece.MirrorLines, "mirror line") is not Segment line)
            return drawn;
        DxfMirror mirror = new(line.Start, line.End);
        ImmutableArray<OutlineVertex> half = mirror.HalfOf(drawn.Outline);
        bool isOnFold = wish.Cut.Kind == CutKind.OnFold;
        if (half.IsDefault && isOnFold)
            Fail(DxfFaults.DrawnWhole());
        if (half.IsDefault)
            return drawn;
        if (isOnFold)
            return DxfMirror.Folded(drawn, half);
        if (wish.Cut.Count > 0)
            Note(DxfFaults.OpenedOut());
        return mirror.Opened(drawn, half);
    }

    private static Point NotchPlace(CurvePoint[] places, ImmutableArray<OutlineVertex> outline)
    {
        OutlineDistance nearest = places.Select(place => OutlineDistance.Nearest(outline, place.Rounded())).MinBy(distance => distance.Distance);
        return nearest.Place;
    }

    private IEnumerable<PieceLine> Lines(OutlineMeaning? meaning)
    {
        IEnumerable<(string Label, SubPath Run)> sewLines = meaning == OutlineMeaning.SeamLine ? [] : piece.SewLines.Select(run => ("sew line", run));
        List<(string Label, SubPath Run)> lines = [.. piece.Lines, .. sewLines];
        if (!lines.TrueForAll(line => DxfRings.IsWithinBounds(line.Run)))
        {
            Fail(DxfFaults.TooMuch($"{DxfLimits.MostOutlinePoints} points in a line"));
            return [];
        }
        return lines.Select(line => new PieceLine(line.Label, Flattening.Open(line.Run.Segments))).Where(line => line.Points.Length > 1);
    }

    private Segment? Single(List<SubPath> runs, string what)
    {
        if (runs.Count == 0)
            return null;
        if (runs.Count > 1)
            Note(DxfFaults.SecondLine(what));
        (Point start, Point end) = (runs[0].Start.Rounded(), runs[0].End.Rounded());
        if ((end - start).NormMicrometers >= 1_000)
            return new Segment(start, end);
        Fail(DxfFaults.NotALine(what));
        return null;
    }

    /// <summary>What the file says of the piece beside its shape; the job decides.</summary>
    private ImmutableArray<string> Said()
    {
        IEnumerable<string> fields = piece.Fields.Where(field => field.Value.Length > 0 && field.Key is not ("PIECE NAME" or "SIZE"))
            .Select(field => $"{field.Key.ToLowerInvariant()} {field.Value}");
        string[] parts = [.. fields, .. piece.MirrorLines.Count > 0 ? ["mirror line"] : Array.Empty<string>(), .. piece.SewLines.Count > 0 ? ["sew line"] : Array.Empty<string>()];
        return [.. parts.Take(20).Select(part => Quantities.QuantityFaults.Shown(part, 60))];
    }

    private void Remark()
    {
        if (piece.CutOuts > 0)
            Note(DxfFaults.CutOuts(piece.CutOuts));
        string said = piece.Field("QUANTITY");
        if (Quantity.Match(said) is not { Success: true } match)
            return;
        int count = int.Parse(match.Groups[1].ValueSpan, CultureInfo.InvariantCulture);
        count += match.Groups[2].Success ? int.Parse(match.Groups[2].ValueSpan, CultureInfo.InvariantCulture) : 0;
        if (count != wish.Cut.FinishedCount && count > 0 && wish.Cut.Count > 0)
            Note(DxfFaults.QuantityDiffers(said, wish.Cut));
    }

    private void Note(Fault fault) => problems.Note(piece.Line, _item, fault);

    private SubPath? Fail(Fault fault)
    {
        _isBroken = true;
        problems.Error(piece.Line, _item, fault);
        return null;
    }
}
