using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Prints problems, one a line: <c>file:line:column (item): what. remedy</c>.</summary>
internal static class ProblemLines
{
    /// <summary>Writes them in the order given; notes say that they are notes.</summary>
    public static void Write(TextWriter writer, IEnumerable<Problem> problems)
    {
        foreach (Problem problem in problems)
            writer.WriteLine(Text(problem));
    }

    /// <summary>"no problems", "1 problem", "3 problems"; notes do not count.</summary>
    public static string Count(IEnumerable<Problem> problems) => problems.Count(problem => problem.Severity == Severity.Error) switch
    {
        0 => "no problems",
        1 => "1 problem",
        int count => FormattableString.Invariant($"{count} problems"),
    };

    private static string Text(Problem problem) => problem.Severity == Severity.Note
        ? (problem with { What = "note: " + problem.What }).ToString()
        : problem.ToString();
}
