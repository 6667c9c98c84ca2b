using System.Globalization;
using System.Xml.Linq;

namespace Nestmark.Bench.Trace;

/// <summary>Traces as a drawing: a panel for each instance, a stepped line for each seed.</summary>
internal static class TracePlot
{
    private const double PanelWidth = 460;
    private const double PanelHeight = 300;
    private const double Left = 70;
    private const double Right = 60;
    private const double Top = 36;
    private const double Bottom = 52;
    private const int Columns = 2;
    private const int Marks = 4;

    /// <summary>Part of the time whose lengths, many times those that matter, run along the upper edge.</summary>
    private const double BeginningPart = 0.03;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static readonly string[] Colors = ["#1b4f72", "#b03a2e", "#1e8449", "#7d6608", "#6c3483", "#5d6d7e"];

    /// <summary>The drawing; empty of panels when there is no line.</summary>
    public static XDocument Of(IEnumerable<TraceLine> lines)
    {
        List<IGrouping<string, TraceLine>> panels = [.. lines.Where(line => line.Points.Count > 0).GroupBy(line => line.Instance)];
        int columns = Math.Clamp(panels.Count, 1, Columns);
        double width = columns * PanelWidth;
        double height = Math.Max(1, (panels.Count + columns - 1) / columns) * PanelHeight;
        XElement root = new(Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Text(width)} {Text(height)}"), new XAttribute("width", Text(width)), new XAttribute("height", Text(height)),
            new XAttribute("font-family", "sans-serif"), new XAttribute("font-size", "12"),
            new XElement(Svg + "rect", new XAttribute("width", "100%"), new XAttribute("height", "100%"), new XAttribute("fill", "white")));
        for (int i = 0; i < panels.Count; i++)
            root.Add(Panel([.. panels[i]], i % columns * PanelWidth, i / columns * PanelHeight));
        return new XDocument(root);
    }

    private static XElement Panel(List<TraceLine> lines, double x, double y)
    {
        double seconds = Math.Max(0.001, lines.Max(line => line.Points[^1].Seconds));
        double low = lines.Min(line => line.Points[^1].Length);
        double high = lines.Max(line => LengthAt(line, BeginningPart * seconds));
        double room = Math.Max(high - low, high * 0.001) * 0.05;
        Axis time = new(0, seconds, Left, PanelWidth - Right);
        Axis length = new(low - room, high + room, PanelHeight - Bottom, Top);
        XElement panel = new(Svg + "g", new XAttribute("transform", $"translate({Text(x)} {Text(y)})"), Label(lines[0].Instance, PanelWidth / 2, 20, "middle", "bold"));
        panel.Add(Axes(time, length));
        for (int i = 0; i < lines.Count; i++)
            panel.Add(Line(lines[i], time, length, Colors[i % Colors.Length], i));
        return panel;
    }

    private static double LengthAt(TraceLine line, double seconds) => line.Points.LastOrDefault(point => point.Seconds <= seconds, line.Points[0]).Length;

    private static IEnumerable<XElement> Axes(Axis time, Axis length)
    {
        for (int i = 0; i <= Marks; i++)
        {
            double atTime = time.Part(i / (double)Marks);
            double atLength = length.Part(i / (double)Marks);
            yield return Rule(time.Of(atTime), Top, time.Of(atTime), PanelHeight - Bottom);
            yield return Label(Text(atTime), time.Of(atTime), PanelHeight - Bottom + 16, "middle");
            yield return Rule(Left, length.Of(atLength), PanelWidth - Right, length.Of(atLength));
            yield return Label(Text(atLength), Left - 6, length.Of(atLength) + 4, "end");
        }
        yield return Label("seconds since the start", (Left + PanelWidth - Right) / 2, PanelHeight - 14, "middle");
        XElement upright = Label("length of the best lay", 0, 0, "middle");
        upright.SetAttributeValue("transform", $"translate(14 {Text((Top + PanelHeight - Bottom) / 2)}) rotate(-90)");
        yield return upright;
    }

    /// <summary>A step at each better lay, with the seed written at the end.</summary>
    private static IEnumerable<XElement> Line(TraceLine line, Axis time, Axis length, string color, int row)
    {
        List<string> places = [];
        double before = line.Points[0].Length;
        foreach (TracePoint point in line.Points)
        {
            places.Add($"{Text(time.Of(point.Seconds))},{Text(length.Of(before))}");
            places.Add($"{Text(time.Of(point.Seconds))},{Text(length.Of(point.Length))}");
            before = point.Length;
        }
        yield return new XElement(Svg + "polyline", new XAttribute("points", string.Join(' ', places)),
            new XAttribute("fill", "none"), new XAttribute("stroke", color), new XAttribute("stroke-width", "1.5"));
        XElement label = Label($"seed {line.Seed}", PanelWidth - Right + 6, Top + 12 + 15 * row, "start");
        label.SetAttributeValue("fill", color);
        yield return label;
    }

    private static XElement Rule(double x1, double y1, double x2, double y2) => new(Svg + "line",
        new XAttribute("x1", Text(x1)), new XAttribute("y1", Text(y1)), new XAttribute("x2", Text(x2)), new XAttribute("y2", Text(y2)), new XAttribute("stroke", "#dddddd"));

    private static XElement Label(string text, double x, double y, string anchor, string weight = "normal") => new(Svg + "text",
        new XAttribute("x", Text(x)), new XAttribute("y", Text(y)), new XAttribute("text-anchor", anchor), new XAttribute("font-weight", weight), text);

    private static string Text(double number) => Math.Round(number, Math.Abs(number) >= 1000 ? 0 : Math.Abs(number) >= 20 ? 1 : 2).ToString(CultureInfo.InvariantCulture);

    private readonly record struct Axis(double Low, double High, double From, double To)
    {
        public double Part(double part) => Low + part * (High - Low);

        public double Of(double value) => From + (Math.Min(value, High) - Low) / (High - Low) * (To - From);
    }
}
