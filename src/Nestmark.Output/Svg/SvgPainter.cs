using System.Collections.Immutable;
using System.Globalization;
using System.Xml;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Svg;

/// <summary>Writes a picture as SVG at true size: one user unit is one millimeter; y is turned here and nowhere else.</summary>
internal sealed class SvgPainter(XmlWriter xml, Area area)
{
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>The file's bytes.</summary>
    /// <param name="picture">What is drawn.</param>
    /// <param name="area">The part of the picture that the file shows.</param>
    /// <param name="title">Title of the whole.</param>
    /// <param name="origin">Tag by which the program knows its own files.</param>
    public static byte[] Write(Drawing picture, Area area, string title, string origin)
    {
        using MemoryStream file = new();
        XmlWriterSettings settings = new() { Indent = true, NewLineChars = "\n", Encoding = new System.Text.UTF8Encoding(false) };
        using (XmlWriter xml = XmlWriter.Create(file, settings))
        {
            xml.WriteStartElement("svg", Namespace);
            xml.WriteAttributeString("width", Number(area.WidthMillimeters) + "mm");
            xml.WriteAttributeString("height", Number(area.HeightMillimeters) + "mm");
            xml.WriteAttributeString("viewBox", $"0 0 {Number(area.WidthMillimeters)} {Number(area.HeightMillimeters)}");
            xml.WriteElementString("title", Namespace, CleanText.OneLine(title));
            xml.WriteElementString("metadata", Namespace, origin);
            new SvgPainter(xml, area).Paint(picture);
            xml.WriteEndElement();
        }
        file.WriteByte((byte)'\n');
        return file.ToArray();
    }

    private void Paint(Drawing drawing)
    {
        foreach (Figure figure in drawing.Figures)
            Paint(figure);
    }

    private void Paint(Figure figure)
    {
        switch (figure)
        {
            case PathFigure path:
                PaintPath(path);
                break;
            case TextFigure text:
                PaintText(text);
                break;
            case GroupFigure group:
                PaintGroup(group);
                break;
            default:
                throw new ArgumentException("SVG has no pages: windows are for PDF.", nameof(figure));
        }
    }

    private void PaintGroup(GroupFigure group)
    {
        xml.WriteStartElement("g", Namespace);
        xml.WriteAttributeString("id", group.Id);
        xml.WriteElementString("title", Namespace, CleanText.OneLine(group.Title));
        if (group.Description.Length > 0)
            xml.WriteElementString("desc", Namespace, CleanText.OneLine(group.Description));
        Paint(group.Inner);
        xml.WriteEndElement();
    }

    private void PaintPath(PathFigure figure)
    {
        bool single = figure.Runs.Length == 1;
        bool closed = figure.Ends == PathEnds.Closed;
        xml.WriteStartElement(single ? closed ? "polygon" : "polyline" : "path", Namespace);
        xml.WriteAttributeString("class", ClassOf(figure.Role));
        if (single)
            xml.WriteAttributeString("points", string.Join(' ', figure.Runs[0].Select(Pair)));
        else
            xml.WriteAttributeString("d", string.Concat(figure.Runs.Select(run => PathData(run, closed ? "Z" : ""))));
        xml.WriteAttributeString("fill", figure.FillGrayRatio is double gray ? Gray(gray) : "none");
        if (figure.FillGrayRatio is not null && !single)
            xml.WriteAttributeString("fill-rule", "evenodd");
        if (figure.Line is Ink ink)
            WriteLine(ink);
        xml.WriteEndElement();
    }

    private void WriteLine(Ink ink)
    {
        xml.WriteAttributeString("stroke", Gray(ink.GrayRatio));
        xml.WriteAttributeString("stroke-width", Number(ink.WidthMillimeters));
        if (ink.DashesMillimeters is { Length: > 0 } dashes)
            xml.WriteAttributeString("stroke-dasharray", string.Join(' ', dashes.Select(Number)));
    }

    private void PaintText(TextFigure figure)
    {
        string text = CleanText.OneLine(figure.Text);
        if (text.Length == 0)
            return;
        xml.WriteStartElement("text", Namespace);
        xml.WriteAttributeString("class", ClassOf(figure.Role));
        xml.WriteAttributeString("x", X(figure.At));
        xml.WriteAttributeString("y", Y(figure.At));
        xml.WriteAttributeString("font-family", PrintFont.Family + ", sans-serif");
        xml.WriteAttributeString("font-size", Number(figure.SizeMillimeters));
        if (figure.Weight == FontWeight.Bold)
            xml.WriteAttributeString("font-weight", "bold");
        if (figure.Anchor != Anchor.Start)
            xml.WriteAttributeString("text-anchor", figure.Anchor == Anchor.Middle ? "middle" : "end");
        if (figure.Turn != Angle.Zero)
            xml.WriteAttributeString("transform", $"rotate({Number(-figure.Turn.SignedDegrees)} {X(figure.At)} {Y(figure.At)})");
        xml.WriteAttributeString("fill", Gray(figure.GrayRatio));
        xml.WriteString(text);
        xml.WriteEndElement();
    }

    private string PathData(ImmutableArray<Spot> run, string end) => "M" + string.Join(" L", run.Select(Pair)) + end;

    private string Pair(Spot spot) => X(spot) + "," + Y(spot);

    private string X(Spot spot) => Number(spot.XMillimeters - area.LeftMillimeters);

    private string Y(Spot spot) => Number(area.TopMillimeters - spot.YMillimeters);

    private static string ClassOf(Role role) => string.Concat(
        role.ToString().Select((letter, i) => char.IsUpper(letter) && i > 0 ? "-" + char.ToLowerInvariant(letter) : char.ToLowerInvariant(letter).ToString()));

    private static string Gray(double ratio)
    {
        int level = (int)Math.Round(ratio * 255);
        return string.Create(CultureInfo.InvariantCulture, $"#{level:x2}{level:x2}{level:x2}");
    }

    // Adding zero turns the -0 of tiny negative numbers into 0.
    private static string Number(double value) => (Math.Round(value, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);
}
