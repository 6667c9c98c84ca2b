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
    public void Job_files_with_flipped_bytes_never_throw() => Flips.Sample(
        flips => Read(Flipped(Job, flips), Drawing), seed: "0000KOIPe036", iter: 150, threads: 1);

    [Fact]
    public void Job_files_with_characters_that_mean_something_never_throw() => Confusions.Sample(
        flips => Read(Flipped(Job, flips), Drawing), seed: "0000KOIPe036", iter: 400, threads: 1);

    [Fact]
    public void Drawings_with_flipped_bytes_never_throw() => Flips.Sample(
        flips => Read(Job, Flipped(Drawing, flips)), seed: "0000KOIPe036", iter: 100, threads: 1);

    [Fact]
    public void Drawings_with_characters_that_mean_something_never_throw() => Confusions.Sample(
        flips => Read(Job, Flipped(Drawing, flips)), seed: "0000KOIPe036", iter: 200, threads: 1);

    [Fact]
    public void Files_cut_off_anywhere_never_throw() => Gen.Select(Gen.Int[0, Job.Length], Gen.Int[0, Drawing.Length]).Sample((jobEnd, drawingEnd) =>
    {
        Read(Job[..jobEnd], Drawing);
        Read(Job, Drawing[..drawingEnd]);
    }, seed: "0000KOIPe036", iter: 100, threads: 1);

    [Fact]
    public void Job_files_with_lines_moved_never_throw()
    {
        string[] lines = System.Text.Encoding.UTF8.GetString(Job).Split('\n');
        Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, lines.Length - 1]).Sample((from, to) =>
        {
            List<string> moved = [.. lines];
            moved.Insert(to, moved[from]);
            Read(System.Text.Encoding.UTF8.GetBytes(string.Join('\n', moved)), Drawing);
        }, seed: "0000KOIPe036", iter: 60, threads: 1);
    }

    private static byte[] Flipped(byte[] bytes, (int At, byte Value)[] flips)
    {
        byte[] copy = [.. bytes];
        foreach ((int at, byte value) in flips)
            copy[at % copy.Length] = value;
        return copy;
    }

    private static void Read(byte[] job, byte[] drawing)
    {
        JobReading reading = JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", job).With("apron.svg", drawing));
        Assert.Equal(reading.Job is null, reading.Problems.Any(problem => problem.Severity == Nestmark.Yardage.Severity.Error));
    }
}
