using CsCheck;
using Nestmark.Input;

namespace Nestmark.Tests.Input;

/// <summary>Good files with bytes flipped, lines cut and doubled: problems perhaps, an exception never.</summary>
public sealed class RobustnessTests
{
    private static readonly byte[] Job = File.ReadAllBytes(Fixtures.PathOf("small-apron/job.yaml"));
    private static readonly byte[] Drawing = File.ReadAllBytes(Fixtures.PathOf("small-apron/apron.svg"));

    private static readonly Gen<(int At, byte Value)[]> Flips = Gen.Select(Gen.Int[0, 100_000], Gen.Byte).Array[1, 4];

    private static readonly Gen<(int At, byte Value)[]> Confusions = Gen.Select(
        Gen.Int[0, 100_000], Gen.Int[0, 23].Select(i => (byte)"0-.,:{}[]#&*!|>'\"<%@\n\t/e"[i])).Array[1, 4];

    [Fact]
    public void Job_files_with_flipped_bytes_never_throw() => Flips.Check(150,
        flips => Read(Flipped(Job, flips), Drawing));

    [Fact]
    public void Job_files_with_characters_that_mean_something_never_throw() => Confusions.Check(250,
        flips => Read(Flipped(Job, flips), Drawing));

    [Fact]
    public void Drawings_with_flipped_bytes_never_throw() => Flips.Check(100,
        flips => Read(Job, Flipped(Drawing, flips)));

    [Fact]
    public void Drawings_with_characters_that_mean_something_never_throw() => Confusions.Check(120,
        flips => Read(Job, Flipped(Drawing, flips)));

    [Fact]
    public void Files_cut_off_anywhere_never_throw() => Gen.Select(Gen.Int[0, Job.Length], Gen.Int[0, Drawing.Length]).Check(100, (jobEnd, drawingEnd) =>
    {
        Read(Job[..jobEnd], Drawing);
        Read(Job, Drawing[..drawingEnd]);
    });

    [Fact]
    public void Job_files_with_lines_moved_never_throw()
    {
        string[] lines = System.Text.Encoding.UTF8.GetString(Job).Split('\n');
        Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, lines.Length - 1]).Check(60, (from, to) =>
        {
            List<string> moved = [.. lines];
            moved.Insert(to, moved[from]);
            Read(System.Text.Encoding.UTF8.GetBytes(string.Join('\n', moved)), Drawing);
        });
    }

    [Theory]
    [InlineData("layers-plain")]
    [InlineData("turned-plain")]
    public void Pdf_patterns_with_changed_bytes_never_throw(string name)
    {
        byte[] job = File.ReadAllBytes(Fixtures.PathOf($"pdf/{name}.yaml"));
        byte[] pdf = File.ReadAllBytes(Fixtures.PathOf($"pdf/{name}.pdf"));
        Gen.OneOf(Flips, Confusions).Check(80, flips => Read(job, name + ".pdf", Flipped(pdf, flips)));
        Gen.Int[0, pdf.Length].Check(30, end => Read(job, name + ".pdf", pdf[..end]));
    }

    private static byte[] Flipped(byte[] bytes, (int At, byte Value)[] flips)
    {
        byte[] copy = [.. bytes];
        foreach ((int at, byte value) in flips)
            copy[at % copy.Length] = value;
        return copy;
    }

    private static void Read(byte[] job, byte[] drawing) => Read(job, "apron.svg", drawing);

    private static void Read(byte[] job, string name, byte[] drawing)
    {
        JobReading reading = JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", job).With(name, drawing));
        Assert.Equal(reading.Job is null, reading.Problems.Any(problem => problem.Severity == Nestmark.Yardage.Severity.Error));
    }
}
