using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Tests.Output.Charts;

/// <summary>The files of a chart: text, CSV, JSON and PDF, and the cells that are kept between runs.</summary>
public sealed class ChartFilesTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("nestmark-chart-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void The_text_reads_as_accepted() => Approve.Text("chart.txt", ChartText.Of(Made()));

    [Fact]
    public void The_text_file_ends_with_the_tag_of_its_job() =>
        Assert.EndsWith("\n" + JobOrigin.Of(Made().Job) + "\n", Encoding.UTF8.GetString(ChartText.Write(Made())), StringComparison.Ordinal);

    [Fact]
    public void The_csv_has_a_line_for_each_cell_with_texts_in_quotes_where_need_be()
    {
        string[] lines = Encoding.UTF8.GetString(ChartCsv.Write(Made())).Split("\r\n");
        Assert.Equal("title,cloth,size,nap,width_mm,lay_length_mm,efficiency,buy_m,buy_yd,yards,reason,origin", lines[0]);
        Assert.Equal(2 * 2 * 2 + 2, lines.Length);
        Assert.StartsWith("\"Smock, \"\"best\"\"\",shell,S,with nap,900,,,,,,\"panel is too deep, by far.\",nestmark-job:", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("\"Smock, \"\"best\"\"\",shell,S,with nap,1400,1610,0.8123,1.7,1.875,1 7/8,,nestmark-job:", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void The_json_says_for_each_cell_what_to_buy_in_both_systems_and_whose_marker_it_is()
    {
        JsonElement root = JsonDocument.Parse(ChartJson.Write(Made())).RootElement;
        JsonElement[] cells = [.. root.GetProperty("cells").EnumerateArray()];
        Assert.Equal((8, true), (cells.Length, root.GetProperty("complete").GetBoolean()));
        Assert.Equal(JsonValueKind.Null, cells[0].GetProperty("metric").ValueKind);
        Assert.Equal("panel is too deep, by far.", cells[0].GetProperty("unplaced")[0].GetProperty("reason").GetString());
        Assert.Equal("1.70 m", cells[1].GetProperty("metric").GetProperty("text").GetString());
        Assert.Equal("1 7/8 yd", cells[1].GetProperty("imperial").GetProperty("text").GetString());
        Assert.Equal(1610, cells[1].GetProperty("layLength_mm").GetDecimal());
        Assert.Equal("one-way", cells[5].GetProperty("laidAs").GetProperty("nap").GetString());
    }

    [Fact]
    public void The_pdf_shows_every_cell_and_the_reasons_and_is_the_same_every_time()
    {
        byte[] file = ChartPdf.Write(Made());
        Assert.Equal(file, ChartPdf.Write(Made()));
        using UglyToad.PdfPig.PdfDocument document = UglyToad.PdfPig.PdfDocument.Open(file);
        string text = string.Join(' ', document.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
        Assert.Equal(1, document.NumberOfPages);
        foreach (string expected in (string[])["Cloth required for one garment", "shell, lay folded, with nap", "shell, lay folded, without nap", "1.70", "1 7/8", "no: panel", "(1) panel is too deep, by far.", "for each cut end"])
            Assert.Contains(expected, text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chart_of_many_sizes_and_widths_runs_on_over_pages()
    {
        ImmutableArray<string> sizes = [.. Enumerable.Range(1, 60).Select(i => FormattableString.Invariant($"size {i}"))];
        byte[] file = ChartPdf.Write(Made(sizes, [700, 800, 900, 1000, 1150, 1400, 1500]));
        using UglyToad.PdfPig.PdfDocument document = UglyToad.PdfPig.PdfDocument.Open(file);
        string[] words = [.. document.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text)];
        Assert.InRange(document.NumberOfPages, 4, 12);

        // Two naps, and seven widths in tables of five and two: each size stands in four tables.
        Assert.Equal(4, words.Count(word => word == "60"));
    }

    [Fact]
    public void Cells_are_found_again_by_their_key_and_a_broken_line_is_passed_over()
    {
        ChartFinding good = new(Length.FromMillimeters(1610), 0.8123, []);
        ChartFinding bad = new(Length.Zero, 0, [new Unplaced("panel", "S", "panel is \"too\" deep.")]);
        ChartCellsFile file = ChartCellsFile.Open(_folder, "nestmark-job:1");
        file.Add("a", good);
        file.Add("b", bad);
        File.AppendAllText(Path.Combine(_folder, ChartCellsFile.Name), "{\"key\":\"c\",\"layLen");
        ChartCellsFile again = ChartCellsFile.Open(_folder, "nestmark-job:1");
        Assert.Equal((good.LayLength, good.EfficiencyRatio), (again.Find("a")!.LayLength, again.Find("a")!.EfficiencyRatio));
        Assert.Equal(bad.Unplaced.AsEnumerable(), again.Find("b")!.Unplaced.AsEnumerable());
        Assert.Null(again.Find("c"));
        again.Add("c", good);
        Assert.NotNull(ChartCellsFile.Open(_folder, "nestmark-job:1").Find("c"));
        Assert.Null(again.Problem);
    }

    [Fact]
    public void Cells_of_another_job_are_not_taken()
    {
        ChartCellsFile.Open(_folder, "nestmark-job:1").Add("a", new ChartFinding(Length.Zero, 0, []));
        Assert.Null(ChartCellsFile.Open(_folder, "nestmark-job:2").Find("a"));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_to_becomes_a_problem()
    {
        string path = Path.Combine(_folder, "taken");
        File.WriteAllText(path, "");
        ChartCellsFile file = ChartCellsFile.Open(path, "nestmark-job:1");
        file.Add("a", new ChartFinding(Length.Zero, 0, []));
        Assert.Equal(Severity.Error, file.Problem!.Severity);
    }

    private static Chart Made() => Made(["S", "M"], [900, 1400]);

    private static Chart Made(ImmutableArray<string> sizes, double[] widths)
    {
        Cloth cloth = TestCloths.Folded with { Ends = Length.FromCentimeters(2.5), LengthShrinkageRatio = 0.02 };
        Job job = new("Smock, \"best\"", "job.yaml", MeasureSystem.Metric, [], [cloth], [.. sizes.Select(size => new SizeCount(size, 1))]);
        ChartRequest request = new(["shell"], sizes, [.. widths.Select(Length.FromMillimeters)], [Nap.OneWay, Nap.None], new Effort(null, 10, 1, 1));
        return ChartMaking.Make(job, request, Known, _ => { }, CancellationToken.None);

        static ChartFinding Known(ChartCell cell) => cell.Width < Length.FromMillimeters(1000)
            ? new ChartFinding(Length.Zero, 0, [new Unplaced("panel", cell.Size, "panel is too deep, by far.")])
            : new ChartFinding(Length.FromMillimeters(cell.Nap == Nap.OneWay ? 1610 : cell.Size == "M" ? 1400 : 1650), 0.8123, []);
    }
}
