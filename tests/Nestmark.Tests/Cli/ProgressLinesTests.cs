using Nestmark.Cli;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Yardage;

namespace Nestmark.Tests.Cli;

public sealed class ProgressLinesTests
{
    [Fact]
    public void Piped_progress_is_whole_lines_first_and_last_news_of_each_cloth() =>
        Assert.Equal(
            "shell: lay 152 cm long so far\nshell: lay 149.9 cm long so far\nvoile: lay 80 cm long so far\n",
            Told(TerminalKind.Plain));

    [Fact]
    public void On_a_screen_one_line_is_written_over() =>
        Assert.Equal(
            "\rshell: lay 152 cm long so far\rshell: lay 149.9 cm long so far\rvoile: lay 80 cm long so far   \n",
            Told(TerminalKind.Interactive));

    [Fact]
    public void No_news_print_nothing()
    {
        using StringWriter writer = new();
        new ProgressLines(new Terminal(writer, writer, TerminalKind.Interactive), MeasureSystem.Metric).Dispose();
        Assert.Equal("", writer.ToString());
    }

    // With an infinite period only the first and the last news of a cloth are told, whatever the machine's speed.
    private static string Told(TerminalKind kind)
    {
        using StringWriter writer = new() { NewLine = "\n" };
        using (ProgressLines progress = new(new Terminal(writer, writer, kind), MeasureSystem.Metric, Timeout.InfiniteTimeSpan))
        {
            progress.Report("shell", new SearchProgress(Length.FromMillimeters(1520), 1));
            progress.Report("shell", new SearchProgress(Length.FromMillimeters(1510), 2));
            progress.Report("shell", new SearchProgress(Length.FromMillimeters(1499), 3));
            progress.Report("voile", new SearchProgress(Length.FromMillimeters(800), 1));
        }
        return writer.ToString();
    }
}
