namespace Nestmark.Tests.Cli;

public sealed class CommandLineTests
{
    [Theory]
    [InlineData("")]
    [InlineData("sew job.yaml")]
    [InlineData("lay")]
    [InlineData("lay job.yaml --tempo 3")]
    [InlineData("lay job.yaml another.yaml")]
    [InlineData("lay job.yaml --seconds 1,5")]
    [InlineData("lay job.yaml --seconds -1")]
    [InlineData("lay job.yaml --seconds NaN")]
    [InlineData("lay job.yaml --seconds")]
    [InlineData("lay job.yaml --steps 1.5")]
    [InlineData("lay job.yaml --steps 1,000")]
    [InlineData("lay job.yaml --threads 0")]
    [InlineData("lay job.yaml --seconds 1 --steps 5")]
    [InlineData("lay job.yaml --paper foolscap")]
    [InlineData("lay job.yaml --paper")]
    [InlineData("check")]
    [InlineData("check job.yaml --format svg")]
    [InlineData("check job.yaml --out x --format png")]
    public void A_wrong_command_line_ends_with_2_and_one_line_of_usage(string commandLine)
    {
        CliRun run = new();
        Assert.Equal(2, run.Run(commandLine));
        Assert.Equal("", run.Out);
        string[] lines = run.Error.TrimEnd().Split('\n');
        Assert.True(lines.Length >= 2, run.Error);
        Assert.StartsWith("Usage: nestmark ", lines[^1], StringComparison.Ordinal);
        Assert.Null(run.Plan);
    }

    [Fact]
    public void A_wrong_number_names_the_option_and_what_it_takes()
    {
        CliRun run = new();
        run.Run("lay job.yaml --seconds 1,5");
        Assert.StartsWith("'1,5' is not what --seconds takes: a number with a decimal point from 0 to 86400.\n", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--help", "help.txt")]
    [InlineData("lay --help", "help-lay.txt")]
    [InlineData("check --help", "help-check.txt")]
    public void Help_reads_as_accepted(string commandLine, string snapshot)
    {
        CliRun run = new();
        Assert.Equal(0, run.Run(commandLine));
        // The test host stands in for the program's own name.
        Approve.Text(snapshot, run.Out.Replace(System.CommandLine.RootCommand.ExecutableName, "nestmark", StringComparison.Ordinal));
    }
}
