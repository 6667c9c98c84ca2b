using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Nestmark.Tests.Output;

/// <summary>A page as another reader (PdfPig) sees it, in millimeters from the lowest left corner of the paper.</summary>
internal sealed record PrintedPage(
    double WidthMillimeters, double HeightMillimeters, IReadOnlyList<IReadOnlyList<(double X, double Y)>> Lines, string Text, IReadOnlyList<Letter> Letters)
{
    private const double MillimetersPerPoint = 25.4 / 72;

    /// <summary>All pages of a file.</summary>
    public static IReadOnlyList<PrintedPage> Read(byte[] pdf)
    {
        using PdfDocument document = PdfDocument.Open(pdf);
        return [.. document.GetPages().Select(Of)];
    }

    /// <summary>Width and height of closed shapes of four corners.</summary>
    public IEnumerable<(double Width, double Height)> Rectangles => Lines
        .Where(line => line.Count == 5 && line[0] == line[4])
        .Select(line => (line.Max(at => at.X) - line.Min(at => at.X), line.Max(at => at.Y) - line.Min(at => at.Y)));

    /// <summary>Whether a place on the page lies on a drawn line, within a tolerance in millimeters.</summary>
    public bool HasInkAt(double x, double y, double tolerance) =>
        Lines.Any(line => line.Zip(line.Skip(1)).Any(pair => Distance(pair.First, pair.Second, x, y) <= tolerance));

    private static PrintedPage Of(Page page) => new(
        page.Width * MillimetersPerPoint, page.Height * MillimetersPerPoint,
        [.. page.Paths.Where(path => !path.IsClipping).SelectMany(path => path).Select(PlacesOf)],
        page.Text, page.Letters);

    private static IReadOnlyList<(double X, double Y)> PlacesOf(PdfSubpath path)
    {
        List<(double X, double Y)> places = [];
        foreach (PdfSubpath.IPathCommand command in path.Commands)
        {
            switch (command)
            {
                case PdfSubpath.Move move:
                    places.Add(InMillimeters(move.Location));
                    break;
                case PdfSubpath.Line line:
                    places.Add(InMillimeters(line.To));
                    break;
                case PdfSubpath.Close when places[^1] != places[0]:
                    places.Add(places[0]);
                    break;
            }
        }
        return places;
    }

    private static (double X, double Y) InMillimeters(PdfPoint point) => (point.X * MillimetersPerPoint, point.Y * MillimetersPerPoint);

    private static double Distance((double X, double Y) start, (double X, double Y) end, double x, double y)
    {
        double dx = end.X - start.X;
        double dy = end.Y - start.Y;
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.Clamp(((x - start.X) * dx + (y - start.Y) * dy) / square, 0, 1);
        return Math.Sqrt(Math.Pow(start.X + t * dx - x, 2) + Math.Pow(start.Y + t * dy - y, 2));
    }
}
