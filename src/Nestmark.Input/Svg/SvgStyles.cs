using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Nestmark.Input.Svg;

/// <summary>Looks for styles that move, reshape or hide what is drawn.</summary>
internal static class SvgStyles
{
    private static readonly Regex Moving = new(
        @"(?:^|[;{\s])(transform|transform-origin|translate|rotate|scale|zoom|offset|offset-path|d|x|y|cx|cy|r|rx|ry|width|height)\s*:",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    private static readonly Regex Hiding = new(
        @"(?:^|[;{\s])display\s*:\s*none", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase);

    /// <summary>What is wrong with the style attribute (or transform-origin) of an element, or <c>null</c>.</summary>
    public static Fault? FaultOf(XElement element)
    {
        if (element.Attribute("transform-origin") is not null)
            return SvgFaults.StyleMoves("transform-origin");
        Match match = Moving.Match(element.Attribute("style")?.Value ?? "");
        return match.Success ? SvgFaults.StyleMoves(match.Groups[1].Value) : null;
    }

    /// <summary>What is wrong with a style sheet inside the drawing, or <c>null</c>. One that only colors is fine.</summary>
    public static Fault? FaultOfSheet(string sheet)
    {
        Match match = Moving.Match(sheet);
        if (match.Success)
            return SvgFaults.StyleMoves(match.Groups[1].Value);
        return Hiding.IsMatch(sheet) ? SvgFaults.StyleMoves("display: none") : null;
    }

    /// <summary>Whether an element itself is not shown.</summary>
    public static bool IsHidden(XElement element) =>
        element.Attribute("display")?.Value.Trim() == "none" || Hiding.IsMatch(element.Attribute("style")?.Value ?? "");
}
