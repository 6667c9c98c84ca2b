using System.Collections.Immutable;
using System.CommandLine;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary><c>nestmark check JOB</c>: reads the job and says what is wrong with it; with a drawing, says which pieces it holds.</summary>
internal static class CheckCommand
{
    /// <summary>The verb.</summary>
    public const string Name = "check";

    /// <summary>The command with its options.</summary>
    public static Command Make(Terminal terminal, Doors doors)
    {
        Argument<string> job = new("JOB") { Description = "The job file; or a drawing, to list the pieces in it." };
        Option<string?> folder = new("--out") { Description = "Draw the pieces into this folder: a sheet to look at, and files for other programs.", HelpName = "DIR" };
        Option<ImmutableArray<string>> formats = FormatOption();
        Option<bool> force = new("--force") { Description = "Replace files in the folder that did not come from this job." };
        Command command = new(Name, "Read the job, show its pieces and say what is wrong; writes files only with --out.") { job, folder, formats, force };
        folder.Validators.Add(result =>
        {
            if (string.IsNullOrWhiteSpace(result.GetValueOrDefault<string>()))
                result.AddError("--out takes the name of a folder, and it is empty.");
        });
        command.Validators.Add(result =>
        {
            if (result.GetResult(formats) is { Implicit: false } && result.GetResult(folder) is null)
                result.AddError("--format goes with --out DIR.");
        });
        command.SetAction(parsed => (int)Run(OptionsOf(parsed), terminal, doors));
        return command;

        CheckOptions OptionsOf(ParseResult parsed) => new(
            parsed.GetRequiredValue(job), parsed.GetValue(folder), parsed.GetValue(formats), parsed.GetValue(force) ? Replacing.AnyFile : Replacing.OwnFiles);
    }

    /// <summary>Prints the pieces as read, every problem, and their number; writes the pieces where asked.</summary>
    public static ExitCode Run(CheckOptions options, Terminal terminal, Doors doors)
    {
        if (DrawingListing.IsDrawing(options.File))
            return RunDrawing(options.File, terminal, doors);
        JobReading reading = doors.ReadJob(options.File);
        List<Problem> problems = [.. reading.Problems];
        if (reading.Job is { } job)
        {
            PieceTable.Write(terminal.Out, job);
            ChangeLines.Write(terminal.Out, job);
            SeamTable.Write(terminal.Out, job);
            problems.AddRange(Planner.Check(job));
        }
        ProblemLines.Write(terminal.Out, problems);
        terminal.Out.WriteLine(ProblemLines.Count(problems));
        if (options.Folder is not null)
            problems.AddRange(Written(reading.Job, problems, options, terminal, doors));
        return ExitCodes.Of([], problems, null);
    }

    private static ExitCode RunDrawing(string file, Terminal terminal, Doors doors)
    {
        DrawingReading drawing = doors.ReadDrawing(file);
        if (!drawing.Pieces.IsEmpty)
            DrawingTable.Write(terminal.Out, drawing.Pieces);
        ProblemLines.Write(terminal.Out, drawing.Problems);
        terminal.Out.WriteLine(ProblemLines.Count(drawing.Problems));
        return ExitCodes.Of([], drawing.Problems, null);
    }

    private static ImmutableArray<Problem> Written(Job? job, List<Problem> problems, CheckOptions options, Terminal terminal, Doors doors)
    {
        if (job is null)
        {
            terminal.Out.WriteLine("No piece sheet was written: it can be drawn once the job can be read.");
            return [];
        }
        WrittenFiles written = doors.WritePieces(job, [.. problems], options);
        if (written.Problems.IsEmpty)
            terminal.Out.WriteLine($"Written to {written.Folder}: {string.Join(", ", written.Names)}");
        ProblemLines.Write(terminal.Error, written.Problems);
        return written.Problems;
    }

    private static Option<ImmutableArray<string>> FormatOption() => new("--format")
    {
        Description = "Formats of the pieces, with commas between them: pdf, svg, dxf. [default: all]",
        HelpName = "F",
        DefaultValueFactory = _ => PieceFiles.Formats,
        CustomParser = result =>
        {
            string[] words = [.. result.Tokens.SelectMany(token => token.Value.Split(',')).Select(word => word.Trim().ToLowerInvariant()).Distinct()];
            foreach (string unknown in words.Where(word => !PieceFiles.Formats.Contains(word)))
                result.AddError($"--format takes pdf, svg and dxf, not \"{unknown}\".");
            return [.. words];
        },
    };
}
