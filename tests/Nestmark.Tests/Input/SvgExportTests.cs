using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>Drawings as other programs write them, and their true size. The files come from <c>fixtures/pdf/make.py</c>; its numbers are expected here.</summary>
public sealed class SvgExportTests
{
    private static readonly Lazy<Job> Exports = new(() => Jobs.Good(JobReader.Read(Fixtures.PathOf("svg/exports.yaml"), new DiskFiles())));

    [Theory]
    [InlineData("plain front", 300, 180)] // cairo's own export, in points, shapes without ids
    [InlineData("layered", 200, 100)] // grainline drawn along its length
    [InlineData("twin", 200, 100)]
    [InlineData("band", 200, 40)]
    [InlineData("front 72", 300, 180)] // px at 72 in an inch, found by the test square
    [InlineData("front 96", 300, 180)]
    [InlineData("front scaled", 300, 180)] // says 75 % of its size
    public void Exports_are_read_at_their_true_size(string name, double width, double height)
    {
        Box box = Exports.Value.Pieces.Single(piece => piece.Piece.Name == name).Piece.SeamLine.Bounds;
        Assert.Equal(width, box.Width / 1000.0, 0.02);
        Assert.Equal(height, box.Height / 1000.0, 0.06);
    }

    [Fact]
    public void Ends_that_miss_each_other_are_joined_and_the_wide_gap_is_noted()
    {
        Problem note = Assert.Single(JobReader.Read(Fixtures.PathOf("svg/exports.yaml"), new DiskFiles()).Problems, problem => problem.Where.Item == "#band");
        Assert.Equal(Severity.Note, note.Severity);
        Assert.Contains("gap of 0.5 mm", note.What, StringComparison.Ordinal);
    }

    [Fact]
    public void A_test_square_in_px_tells_the_units_in_an_inch() =>
        Assert.Contains(Read("test_square: 5 cm", 72).Problems, note => note.What.Contains("72 units in an inch, the usual 72 dpi", StringComparison.Ordinal));

    [Fact]
    public void Pictures_in_a_piece_are_listed() => Assert.Contains(
        JobReader.Read(Fixtures.PathOf("svg/exports.yaml"), new DiskFiles()).Problems, note => note.What == "A picture (image) in the piece is no line and was left out.");

    [Theory]
    [InlineData(72, "scale: 96 dpi", "the drawing is 25 % too small, as if drawn at 72 dpi and read at 96", "scale: 133.33 %")]
    [InlineData(96, "scale: 72 dpi", "the drawing is 33.3 % too large, as if drawn at 96 dpi and read at 72", "scale: 75 %")]
    [InlineData(90, "scale: 96 dpi", "the drawing is 6.3 % too small, as if drawn at 90 dpi and read at 96", "scale: 106.67 %")]
    public void A_wrong_guess_of_units_is_named_with_the_scale_to_write(double units, string scale, string what, string hint)
    {
        Problem problem = Assert.Single(Read(scale + ", test_square: 5 cm", units).Problems, problem => problem.Severity == Severity.Error);
        Assert.Contains(what, problem.What, StringComparison.Ordinal);
        Assert.Contains(hint, problem.Hint, StringComparison.Ordinal);
        Assert.Equal("drawing.svg", problem.Where.File);
    }

    [Fact]
    public void A_drawing_in_px_with_its_units_is_true_to_size()
    {
        Job job = Jobs.Good(Read("scale: 90 dpi, test_square: 5 cm", 90));
        Assert.Equal(200, job.Pieces[0].Piece.CuttingLine.Bounds.Width / 1000.0, 0.01);
    }

    [Theory]
    [InlineData("test_square: { side: 5 cm, id: nowhere }", "No test square was found")]
    [InlineData("scale: large", "Found \"large\"")]
    [InlineData("scale: 4 cm", "expected a percentage, or the units")]
    [InlineData("tiles: { pages: [[1]] }", "The key tiles is not known here.")]
    [InlineData("test_square: { id: x }", "The key side is missing.")]
    public void Settings_that_cannot_be_are_refused(string settings, string what) =>
        Assert.Contains(Read(settings, 96).Problems, problem => problem.Severity == Severity.Error && problem.What.Contains(what, StringComparison.Ordinal));

    [Fact]
    public void Units_in_an_inch_for_a_drawing_in_millimeters_are_refused() =>
        Assert.Contains("says its own size", Jobs.OnlyProblem(Read("scale: 96 dpi", 0)).What, StringComparison.Ordinal);

    [Fact]
    public void Settings_of_a_drawing_that_no_piece_names_are_noted()
    {
        string job = Jobs.Head + "pieces: { a: { circle: 20, cut: 1 } }\ncloths: { shell: { width: 140, lay: open } }\ndrawings: { other.svg: { scale: 50 % } }\n";
        Problem note = Jobs.OnlyProblem(Jobs.Read(job));
        Assert.Equal((Severity.Note, "No piece names other.svg."), (note.Severity, note.What));
    }

    /// <summary>A rectangle of 200 x 100 mm and a square of 50 mm, in so many units to the inch; 0 for a drawing in millimeters.</summary>
    private static JobReading Read(string settings, double units)
    {
        double factor = units == 0 ? 1 : units / 25.4;
        string size = units == 0 ? "mm" : "";
        string svg = FormattableString.Invariant($"""
            <svg xmlns="http://www.w3.org/2000/svg" width="{400 * factor}{size}" height="{300 * factor}{size}" viewBox="0 0 {400 * factor} {300 * factor}">
            <rect id="front" x="{10 * factor}" y="{10 * factor}" width="{200 * factor}" height="{100 * factor}"/>
            <rect class="thin test-square" x="{250 * factor}" y="{10 * factor}" width="{50 * factor}" height="{50 * factor}"/>
            </svg>
            """);
        string job = Jobs.Head + $"pieces: {{ front: {{ outline: drawing.svg#front, cut: 2, line: cut }} }}\ncloths: {{ shell: {{ width: 140 }} }}\ndrawings: {{ drawing.svg: {{ {settings} }} }}\n";
        return JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", job).With("drawing.svg", svg));
    }
}
