using System.Globalization;
using System.Xml.Linq;
using Nestmark.Bench.Trace;

namespace Nestmark.Tests.Bench;

public sealed class TraceTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly TraceLine[] Lines =
    [
        new("albano", 1, 8700, [new(0.25, 0, 11000), new(1.5, 400, 10250.5), new(10, 9000, 9990)]),
        new("albano", 2, 8700, [new(0.3, 0, 11000), new(9.9, 8000, 10100)]),
        new("dagli", 1, 50, [new(0.2, 0, 70.25), new(10, 500, 58.5)]),
    ];

    [Fact]
    public void The_table_has_a_row_for_each_better_lay()
    {
        string[][] rows = [.. TraceCsv.Of(Lines).Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(row => row.Split(','))];
        Assert.Equal(["instance", "seed", "seconds", "steps", "length", "density"], rows[0]);
        Assert.Equal(Lines.Sum(line => line.Points.Count), rows.Length - 1);
        Assert.Equal(["albano", "1", "1.500", "400", "10250.5"], rows[2][..5]);
        Assert.All(rows[1..], row => Assert.Equal(Number(row[0] == "dagli" ? "50" : "8700") / Number(row[4]), Number(row[5]), 1e-6));
    }

    [Fact]
    public void The_drawing_has_a_panel_for_each_instance_and_a_line_for_each_seed()
    {
        XElement root = Drawn();
        XElement[] panels = [.. root.Elements(Svg + "g")];
        Assert.Equal(["albano", "dagli"], panels.Select(panel => panel.Elements(Svg + "text").First().Value));
        Assert.Equal([2, 1], panels.Select(panel => panel.Elements(Svg + "polyline").Count()));
        Assert.All(panels, panel =>
        {
            string[] texts = [.. panel.Elements(Svg + "text").Select(text => text.Value)];
            Assert.Contains("seconds since the start", texts);
            Assert.Contains("length of the best lay", texts);
            Assert.Contains("seed 1", texts);
        });
    }

    // x grows with time; y grows downward in SVG, so a shorter lay lies lower on the page.
    [Fact]
    public void Lines_run_right_and_down_within_their_panel()
    {
        foreach (XElement line in Drawn().Descendants(Svg + "polyline"))
        {
            (double X, double Y)[] places = [.. line.Attribute("points")!.Value.Split(' ').Select(place => place.Split(',')).Select(place => (Number(place[0]), Number(place[1])))];
            Assert.Equal(places.OrderBy(place => place.X).ThenBy(place => place.Y), places);
            Assert.All(places, place => Assert.True(place is { X: >= 70 and <= 400, Y: >= 36 and <= 248 }, $"{place}"));
        }
    }

    [Fact]
    public void The_first_moments_do_not_squeeze_the_rest()
    {
        TraceLine line = new("albano", 1, 8700, [new(0.01, 0, 90000), new(0.2, 10, 11000), new(10, 9000, 10000)]);
        IEnumerable<string> marks = TracePlot.Of([line]).Descendants(Svg + "text").Where(text => text.Attribute("text-anchor")!.Value == "end").Select(text => text.Value);
        Assert.Equal(11050, marks.Max(Number));
    }

    [Fact]
    public void Both_files_are_written_and_read_back()
    {
        string folder = Directory.CreateTempSubdirectory("nestmark-trace").FullName;
        try
        {
            TraceFiles.Write(Path.Combine(folder, "run"), Lines);
            Assert.Equal(TraceCsv.Of(Lines), File.ReadAllText(Path.Combine(folder, "run.csv")));
            Assert.Equal(3, XDocument.Load(Path.Combine(folder, "run.svg")).Descendants(Svg + "polyline").Count());
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Fact]
    public void Nothing_traced_is_an_empty_drawing() => Assert.Empty(TracePlot.Of([]).Root!.Elements(Svg + "g"));

    private static XElement Drawn() => XDocument.Parse(TracePlot.Of(Lines).ToString()).Root!;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
