using Nestmark.Geometry;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;
using Spectre.Console;

namespace Nestmark.Cli;

/// <summary>The seams of a job as a table, and where their notches fall; which alterations broke or mended them.</summary>
internal static class SeamTable
{
    private const int LineColumns = 160;

    /// <summary>Writes one row a seam and size: both lengths along the seam line, what is taken up, difference, ratio, verdict; nothing for a job without seams.</summary>
    public static void Write(TextWriter writer, Job job)
    {
        SeamReport[] reports = [.. SeamReports.Of(job)];
        if (reports.Length == 0)
            return;
        Table table = new Table().Border(TableBorder.None);
        foreach (string heading in new[] { "seam", "size", "first side", "length", "second side", "length", "taken up", "difference", "ratio", "verdict" })
            table.AddColumn(new TableColumn(heading).Padding(0, 0, 2, 0));
        foreach (SeamReport report in reports)
            table.AddRow([.. Cells(report, job.System).Select(Markup.Escape)]);
        writer.WriteLine();
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Width = LineColumns;
        console.Write(table);
        foreach (SeamReport report in reports)
            WriteNotches(writer, report, job.System);
        foreach (SeamReport report in reports)
        {
            foreach (SeamTurn turn in report.Turns)
                writer.WriteLine(SeamWords.Turn(report, turn, job.System));
        }
    }

    private static string[] Cells(SeamReport report, MeasureSystem system)
    {
        SeamWalk walk = report.Walk;
        string sign = walk.Difference > Length.Zero ? "+" : walk.Difference < Length.Zero ? "-" : "";
        return
        [
            report.Seam.Seam.Name, report.Size,
            walk.First, SeamWords.Exact(walk.FirstLength, system),
            walk.Second, SeamWords.Exact(walk.SecondLength, system),
            SeamWords.TakenUp(report, system), sign + SeamWords.Small(walk.Difference, system),
            SeamWords.Ratio(walk.Ratio), SeamWords.Verdict(report, system),
        ];
    }

    private static void WriteNotches(TextWriter writer, SeamReport report, MeasureSystem system)
    {
        SeamWalk walk = report.Walk;
        string[] words =
        [
            .. walk.Meetings.Select(meeting => $"{SeamWords.Notch(meeting.First, system)} to {SeamWords.Notch(meeting.Second, system)}, {SeamWords.Small(Length.FromMillimeters(meeting.ApartMillimeters), system)} apart"),
            .. walk.FirstAlone.Select(notch => $"{SeamWords.Notch(notch, system)} on the first side alone"),
            .. walk.SecondAlone.Select(notch => $"{SeamWords.Notch(notch, system)} on the second side alone"),
        ];
        if (words.Length > 0)
            writer.WriteLine($"notches of {report.Title}: {string.Join("; ", words)}");
    }
}
