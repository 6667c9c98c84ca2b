using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>Reads jobs from text in tests.</summary>
internal static class Jobs
{
    public const string Head = "nestmark: 1\ntitle: Test\nunits: cm\n";

    public static JobReading Read(string yaml) => JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", yaml));

    /// <summary>A job with one piece drawn in an SVG of 400 x 300 mm.</summary>
    public static JobReading ReadDrawing(string svg, string cut = "1 pair", string id = "front") => JobReader.Read("job.yaml", new MemoryFiles()
        .With("job.yaml", Head + $"pieces: {{ front: {{ outline: drawing.svg#{id}, cut: {cut}, line: cut }} }}\ncloths: {{ shell: {{ width: 140 }} }}\n")
        .With("drawing.svg", svg));

    public static Job Good(JobReading reading)
    {
        Assert.Empty(reading.Problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.ToString()));
        return reading.Job!;
    }

    public static Job Good(string yaml) => Good(Read(yaml));

    public static Problem OnlyProblem(JobReading reading) => Assert.Single(reading.Problems);
}
