using System.Globalization;
using System.Xml;
using Nestmark.Geometry;
using Nestmark.Output.Fonts;
using Nestmark.Pieces;

namespace Nestmark.Output.Patterns;

/// <summary>One piece as a group of shapes with the classes that the reader of drawings knows.</summary>
/// <param name="xml">Where it is written.</param>
/// <param name="leftMicrometers">Added to x.</param>
/// <param name="topMicrometers">From which y is taken.</param>
internal sealed class SvgPiece(XmlWriter xml, long leftMicrometers, long topMicrometers)
{
    public const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Millimeters with up to three decimals.</summary>
    public static string Number(long micrometers) => (micrometers / 1000m).ToString("0.###", CultureInfo.InvariantCulture);

    public void Write(Piece piece, string id)
    {
        Start("g", "");
        xml.WriteAttributeString("id", id);
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke", "#000000");
        xml.WriteAttributeString("stroke-width", "0.3");
        Title($"{piece.Title}, cut {piece.Cut}");
        Ring("outline", piece.SeamLine);
        Line("grain", piece.Grainline, "");
        if (FoldOfSeamLine(piece) is Segment fold)
            Line("fold", fold, "");
        foreach (Notch notch in piece.Notches)
            Notch(notch);
        foreach (PieceLine line in piece.Lines)
            Polyline(line);
        foreach (PieceMark mark in piece.Marks)
            Circle("mark", mark.Place, mark.Label);
        foreach (PieceCorner corner in piece.Corners)
            Circle("corner", corner.Place, "");
        xml.WriteEndElement();
        if (!piece.SeamLine.Outer.SequenceEqual(piece.CuttingLine.Outer))
            CuttingLine(piece, id);
    }

    private void CuttingLine(Piece piece, string id)
    {
        Start("g", "");
        xml.WriteAttributeString("id", id + "-cut");
        xml.WriteAttributeString("fill", "none");
        xml.WriteAttributeString("stroke", "#000000");
        xml.WriteAttributeString("stroke-width", "0.5");
        Title($"{piece.Title}, cutting line");
        Ring("outline", piece.CuttingLine);
        Line("grain", piece.Grainline, "");
        if (piece.FoldEdge is Segment fold)
            Line("fold", fold, "");
        xml.WriteEndElement();
    }

    /// <summary>The fold edge as far as the seam line runs; the allowances lengthen it at both ends.</summary>
    private static Segment? FoldOfSeamLine(Piece piece)
    {
        PieceEdge? edge = piece.Edges.FirstOrDefault(edge => edge.Kind == EdgeKind.Fold);
        return edge is null ? null : new Segment(PlaceOf(edge.From), PlaceOf(edge.To));

        Point PlaceOf(string letter) => piece.Corners.First(corner => corner.Letter == letter).Place;
    }

    private void Ring(string role, Polygon polygon)
    {
        Start("polygon", role);
        xml.WriteAttributeString("points", string.Join(' ', polygon.Outer.Select(Pair)));
        xml.WriteEndElement();
    }

    /// <summary>From the seam line out to the cutting line; where nothing was added a small circle on the line.</summary>
    private void Notch(Notch notch)
    {
        if (notch.OnSeamLine == notch.OnCuttingLine)
            Circle("notch", notch.OnSeamLine, notch.Name);
        else
            Line("notch", new Segment(notch.OnSeamLine, notch.OnCuttingLine), notch.Name);
    }

    private void Line(string role, Segment segment, string title)
    {
        Start("line", role);
        xml.WriteAttributeString("x1", X(segment.Start));
        xml.WriteAttributeString("y1", Y(segment.Start));
        xml.WriteAttributeString("x2", X(segment.End));
        xml.WriteAttributeString("y2", Y(segment.End));
        Title(title);
        xml.WriteEndElement();
    }

    private void Polyline(PieceLine line)
    {
        Start("polyline", "line");
        xml.WriteAttributeString("points", string.Join(' ', line.Points.Select(Pair)));
        Title(line.Label);
        xml.WriteEndElement();
    }

    private void Circle(string role, Point center, string title)
    {
        Start("circle", role);
        xml.WriteAttributeString("cx", X(center));
        xml.WriteAttributeString("cy", Y(center));
        xml.WriteAttributeString("r", role == "corner" ? "0.5" : "1.5");
        Title(title);
        xml.WriteEndElement();
    }

    private void Start(string element, string role)
    {
        xml.WriteStartElement(element, Namespace);
        if (role.Length > 0)
            xml.WriteAttributeString("class", role);
    }

    private void Title(string text)
    {
        string line = CleanText.OneLine(text);
        if (line.Length > 0)
            xml.WriteElementString("title", Namespace, line);
    }

    private string Pair(Point point) => X(point) + "," + Y(point);

    private string X(Point point) => Number(point.X + leftMicrometers);

    private string Y(Point point) => Number(topMicrometers - point.Y);
}
