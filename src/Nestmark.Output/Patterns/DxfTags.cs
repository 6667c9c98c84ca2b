using System.Globalization;
using System.Text;
using Nestmark.Geometry;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Patterns;

/// <summary>Tags of a DXF file as they are written: a code on one line, its value on the next, lines ending CR LF.</summary>
internal sealed class DxfTags
{
    private readonly StringBuilder _text = new();

    /// <summary>Everything written so far.</summary>
    public string Text => _text.ToString();

    /// <summary>A code and its value; what is not ASCII is escaped, line ends cannot get in.</summary>
    public void Add(int code, string value) =>
        _text.Append(CultureInfo.InvariantCulture, $"{code,3}\r\n").Append(Escaped(value)).Append("\r\n");

    /// <summary>x and y in millimeters, exact to the micrometer.</summary>
    public void Place(int code, Point place)
    {
        Add(code, Number(place.X));
        Add(code + 10, Number(place.Y));
    }

    /// <summary>A POINT.</summary>
    public void Mark(int layer, Point place)
    {
        Entity("POINT", layer);
        Place(10, place);
    }

    /// <summary>A LINE.</summary>
    public void Line(int layer, Point start, Point end)
    {
        Entity("LINE", layer);
        Place(10, start);
        Place(11, end);
    }

    /// <summary>A POLYLINE, closed or open.</summary>
    public void Polyline(int layer, IEnumerable<Point> points, DxfEnds ends)
    {
        Entity("POLYLINE", layer);
        Add(66, "1");
        Add(70, ends == DxfEnds.Closed ? "1" : "0");
        Place(10, Point.Origin);
        foreach (Point point in points)
        {
            Entity("VERTEX", layer);
            Place(10, point);
        }
        Entity("SEQEND", layer);
    }

    /// <summary>A TEXT 5 mm high; nothing for an empty one.</summary>
    public void Label(int layer, Point place, string text)
    {
        string line = CleanText.OneLine(text);
        if (line.Length == 0)
            return;
        Entity("TEXT", layer);
        Place(10, place);
        Add(40, "5.0");
        Add(1, line);
    }

    private void Entity(string type, int layer)
    {
        Add(0, type);
        Add(8, layer.ToString(CultureInfo.InvariantCulture));
    }

    private static string Number(long micrometers) => (micrometers / 1000m).ToString("0.0##", CultureInfo.InvariantCulture);

    private static string Escaped(string value)
    {
        if (Ascii.IsValid(value))
            return value;
        StringBuilder escaped = new();
        foreach (char letter in value)
            _ = char.IsAscii(letter) ? escaped.Append(letter) : escaped.Append(CultureInfo.InvariantCulture, $"\\U+{(int)letter:X4}");
        return escaped.ToString();
    }
}
