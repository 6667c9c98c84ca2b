using System.Text.RegularExpressions;
using Nestmark.Geometry;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>Reads lines and places as sewists write them: "20 from A", "8 from fold", "5 on A-B", "middle of A-B", "C".</summary>
internal static class AlterTexts
{
    private const RegexOptions Plain = RegexOptions.NonBacktracking | RegexOptions.CultureInvariant;
    private static readonly Regex Level = new(@"^(.+?)\s+from\s+([A-Z]{1,2}|head|tail|fold)(?:\s+toward\s+([A-Z]{1,2}))?$", Plain);
    private static readonly Regex OnEdge = new(@"^(.+?)\s+on\s+([A-Z]{1,2})\s*-\s*([A-Z]{1,2})$", Plain);
    private static readonly Regex Middle = new(@"^middle\s+of\s+([A-Z]{1,2})\s*-\s*([A-Z]{1,2})$", Plain);
    private static readonly Regex Edge = new(@"^\s*([A-Z]{1,2})\s*-\s*([A-Z]{1,2})\s*$", Plain);
    private static readonly Regex Corner = new(@"^[A-Z]{1,2}$", Plain);

    /// <summary>A level line, or else the title of a drawn one.</summary>
    public static Reading<AlterLine> Line(string text, JobContext context)
    {
        Match level = Level.Match(text);
        if (!level.Success)
            return new(new DrawnLine(text), null);
        Reading<Length> distance = context.ZeroOrMore(level.Groups[1].Value);
        return new(new LevelLine(level.Groups[2].Value, level.Groups[3].Value, distance.Value), distance.Fault);
    }

    /// <summary>A place: on an edge, or a corner, mark or notch by its name.</summary>
    public static Reading<AlterPlace> Place(string text, JobContext context)
    {
        Match middle = Middle.Match(text);
        if (middle.Success)
            return new(AlterPlace.AtShare(Joined(middle, 1), 0.5), null);
        Match onEdge = OnEdge.Match(text);
        if (!onEdge.Success)
            return new(AlterPlace.Named(text), null);
        Reading<Length> distance = context.ZeroOrMore(onEdge.Groups[1].Value);
        return new(AlterPlace.OnEdge(Joined(onEdge, 2), distance.Value), distance.Fault);
    }

    /// <summary>An edge, as "A-B".</summary>
    public static Reading<string> EdgeName(string text)
    {
        Match edge = Edge.Match(text);
        return edge.Success ? new(Joined(edge, 1), null) : new(null, JobFaults.EdgeForm(text));
    }

    /// <summary>The letter of a corner.</summary>
    public static Reading<string> CornerLetter(string text) =>
        Corner.IsMatch(text) ? new(text, null) : new(null, AlterFaults.CornerForm(text));

    private static string Joined(Match match, int group) => match.Groups[group].Value + "-" + match.Groups[group + 1].Value;
}
