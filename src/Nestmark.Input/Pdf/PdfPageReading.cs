using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Graphics.Colors;
using UglyToad.PdfPig.Tokens;

namespace Nestmark.Input.Pdf;

/// <summary>Turns a page into lines and words in millimeters from the lowest left of what a viewer shows of it.</summary>
/// <remarks>
/// The library has taken the crop box and the page's rotation into account, not its UserUnit. ISO 32000-1, 8.3.2.3 and 14.11.2.
/// Lines are what is stroked; areas that are only filled, and clipping paths, are no lines.
/// </remarks>
internal sealed class PdfPageReading(PdfDocument document)
{
    private const int MostClips = 1_000;

    private readonly PdfLayers _layers = new(document);
    private int _segments;
    private int _letters;

    /// <summary>Pictures on the pages read so far.</summary>
    public int Images { get; private set; }

    /// <summary>Whether the pages read so far hold more than is read.</summary>
    public bool IsTooMuch => _segments > PdfLimits.MostSegments || _letters > PdfLimits.MostLetters;

    /// <summary>Reads a page.</summary>
    public PdfSheet Read(Page page)
    {
        double unit = 25.4 / 72 * UserUnitOf(page);
        Dictionary<PdfPath, ImmutableArray<string>> layers = _layers.Of(page);
        List<PdfStroke> strokes = [];
        List<TileCutting> clips = [];
        int filled = 0;
        foreach (PdfPath path in page.Paths)
        {
            if (path.IsClipping && clips.Count < MostClips && ClipOf(path, unit) is TileCutting clip)
                clips.Add(clip);
            if (path.IsClipping)
                continue;
            if (path.IsStroked)
                AddStrokes(path, layers.GetValueOrDefault(path, []), page.Number, unit, strokes);
            else if (path.IsFilled)
                filled++;
        }
        Images += page.NumberOfImages;
        List<string> leftOut = [];
        if (page.NumberOfImages > 0)
            leftOut.Add(Counted(page.NumberOfImages, "picture", "", page));
        if (filled > 0)
            leftOut.Add(Counted(filled, "filled area", " without a line", page));
        _letters += page.Letters.Count;
        ImmutableArray<PdfWords> words = IsTooMuch ? [] : PdfTextLines.Of(page, unit);
        return new PdfSheet(string.Create(CultureInfo.InvariantCulture, $"page {page.Number}"), page.Width * unit, page.Height * unit, [.. strokes], words, [.. leftOut]) { Clips = [.. clips.Distinct()] };
    }

    private static TileCutting? ClipOf(PdfPath path, double unit) =>
        path.GetBoundingRectangle() is PdfRectangle box && path.Count == 1 && path[0].Commands.Count is >= 4 and <= 6
            ? new TileCutting(box.Left * unit, box.Bottom * unit, box.Right * unit, box.Top * unit)
            : null;

    private static double UserUnitOf(Page page) =>
        page.Dictionary.TryGet(NameToken.Create("UserUnit"), out NumericToken number) && number.Double is > 0 and <= 75_000 ? number.Double : 1;

    private void AddStrokes(PdfPath path, ImmutableArray<string> layers, int page, double unit, List<PdfStroke> strokes)
    {
        string color = ColorOf(path.StrokeColor);
        string dash = path.LineDashPattern is { Array.Count: > 0 } pattern
            ? string.Join(' ', pattern.Array.Select(number => number.ToString("0.###", CultureInfo.InvariantCulture)))
            : "solid";
        foreach (PdfSubpath subpath in path)
        {
            if (RunOf(subpath, unit) is SubPath run && !IsTooMuch)
                strokes.Add(new PdfStroke(page, run, layers, layers.Any(_layers.IsHidden), color, dash));
        }
    }

    private SubPath? RunOf(PdfSubpath subpath, double unit)
    {
        List<CurveSegment> segments = [];
        bool isClosed = false;
        foreach (PdfSubpath.IPathCommand command in subpath.Commands)
        {
            isClosed |= command is PdfSubpath.Close;
            CurveSegment? segment = command switch
            {
                PdfSubpath.Line line => new StraightSegment(At(line.From, unit), At(line.To, unit)),
                PdfSubpath.CubicBezierCurve cubic => new CubicSegment(At(cubic.StartPoint, unit), At(cubic.FirstControlPoint, unit), At(cubic.SecondControlPoint, unit), At(cubic.EndPoint, unit)),
                PdfSubpath.QuadraticBezierCurve quadratic => CubicSegment.FromQuadratic(At(quadratic.StartPoint, unit), At(quadratic.ControlPoint, unit), At(quadratic.EndPoint, unit)),
                _ => null,
            };
            if (segment is null || (segment is StraightSegment && segment.Start == segment.End))
                continue;
            if (!segment.IsUsable)
                return null;
            segments.Add(segment);
            if (++_segments > PdfLimits.MostSegments)
                return null;
        }
        if (segments.Count == 0)
            return null;
        if (isClosed && segments[^1].End != segments[0].Start)
            segments.Add(new StraightSegment(segments[^1].End, segments[0].Start));
        return new SubPath([.. segments], isClosed ? SubPathForm.Closed : SubPathForm.Open);
    }

    private static CurvePoint At(PdfPoint point, double unit) => new(point.X * unit, point.Y * unit);

    private static string ColorOf(IColor? color)
    {
        try
        {
            return color?.ToRGBValues() is (double red, double green, double blue) ? PdfColors.CodeOf(red, green, blue) : "#000000";
        }
        catch (InvalidOperationException)
        {
            return "pattern";
        }
    }

    private static string Counted(int count, string what, string more, Page page) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}{more} on page {page.Number}");
}
