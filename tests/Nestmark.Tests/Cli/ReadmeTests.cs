using Nestmark.Input;
using Nestmark.Output;

namespace Nestmark.Tests.Cli;

/// <summary>What README.md says, held against the program.</summary>
public sealed class ReadmeTests
{
    private static readonly string Readme = File.ReadAllText(Path.Combine(Fixtures.Repository, "README.md")).ReplaceLineEndings("\n");

    [Fact]
    public void The_example_of_a_job_file_is_read_without_a_problem()
    {
        string folder = Directory.CreateTempSubdirectory("nestmark-readme-").FullName;
        try
        {
            string job = Path.Combine(folder, "job.yaml");
            File.WriteAllText(job, Readme.Split("```yaml\n")[1].Split("```")[0]);
            File.Copy(Fixtures.PathOf("harbour-smock/smock.svg"), Path.Combine(folder, "smock.svg"));
            JobReading reading = JobReader.Read(job, new DiskFiles());
            Assert.Empty(reading.Problems);
            Assert.Equal(["front S", "front M", "sleeve S", "sleeve M", "pocket "], reading.Job!.Pieces.Select(piece => piece.Piece.Name + " " + piece.Piece.Size));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    [Theory]
    [InlineData("lay")]
    [InlineData("chart")]
    public void Every_option_of_a_command_stands_in_its_table_and_no_other(string command)
    {
        CliRun run = new();
        run.Run(command + " --help");
        string[] offered = [.. Options(run.Out).Where(option => option != "--help")];
        IEnumerable<string> table = Readme.Split($"| option of `{command}` |")[1].Split('\n').TakeWhile(line => line.Length > 0);
        Assert.Equal(offered, Options(string.Join('\n', table.Where(line => line.StartsWith("| `--", StringComparison.Ordinal)))));
    }

    [Fact]
    public void Every_paper_that_it_names_can_be_had()
    {
        string row = Readme.Split('\n').Single(line => line.StartsWith("| `--paper", StringComparison.Ordinal));
        string[] papers = [.. row.Split('`').Where((_, i) => i % 2 == 1).Skip(1)];
        Assert.True(papers.Length >= 8);
        Assert.All(papers, paper => Assert.NotNull(Paper.Read(paper).Paper));
    }

    private static string[] Options(string text) =>
        [.. text.Split([' ', '`', ',', '|', '\n', '[', ']'], StringSplitOptions.RemoveEmptyEntries).Where(word => word.StartsWith("--", StringComparison.Ordinal)).Distinct().Order()];
}
