using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Nestmark.Cloths;
using Nestmark.Input.Yaml;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>Reads the key match: rules that tie points of pieces to each other, to bars or to the border.</summary>
internal static class MatchReader
{
    private static readonly Regex Form = new(
        @"^\s*(?<first>.+?)\s+(matches\s+(?<second>.+?)\s+(?<ways>lengthwise|crosswise|both ways)|(?<bar>on a|between)\s+(?<run>lengthwise|crosswise)\s+bars?|(?<border>on the border))\s*$",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture);

    /// <summary>The rules in the order of the file; those that cannot be read are reported and left out.</summary>
    public static ImmutableArray<MatchDraft> Read(MapReader job, JobContext context)
    {
        if (job.Find("match") is not MapEntry entry || entry.Value is BrokenNode)
            return [];
        if (entry.Value is not ListNode list)
        {
            context.Error(entry.Value, "match", MatchFaults.ExpectedList());
            return [];
        }
        List<MatchDraft> drafts = [];
        for (int i = 0; i < list.Items.Length; i++)
        {
            string item = string.Create(CultureInfo.InvariantCulture, $"match[{i + 1}]");
            if (context.AsText(list.Items[i], item) is not TextNode text)
                continue;
            if (RuleOf(text.Text) is { } rule)
                drafts.Add(new MatchDraft(rule, text, item));
            else
                context.Error(text, item, MatchFaults.RuleForm(text.Text));
        }
        return [.. drafts];
    }

    /// <summary>The rules whose pieces, points and print exist; the others are reported.</summary>
    /// <param name="draft">The job as read.</param>
    /// <param name="pieces">Its pieces, made.</param>
    public static ImmutableArray<MatchRule> Checked(JobDraft draft, ImmutableArray<JobPiece> pieces)
    {
        List<MatchRule> rules = [];
        foreach (MatchDraft match in draft.Matches)
        {
            Fault? fault = FaultOf(match.Rule, pieces, draft.Cloths);
            if (fault is null)
                rules.Add(match.Rule);
            else
                draft.Context.Error(match.Node, match.Item, fault);
        }
        return [.. rules];
    }

    private static MatchRule? RuleOf(string text)
    {
        Match match = Form.Match(text);
        if (!match.Success || PointOf(match.Groups["first"].Value) is not { } first)
            return null;
        string words = text.Trim();
        if (match.Groups["border"].Success)
            return new MatchRule(words, first, MatchTarget.Border, null, [ClothAxis.Across]);
        if (match.Groups["bar"].Success)
        {
            MatchTarget target = match.Groups["bar"].Value == "between" ? MatchTarget.BetweenBars : MatchTarget.Bar;
            return new MatchRule(words, first, target, null, [match.Groups["run"].Value == "lengthwise" ? ClothAxis.Across : ClothAxis.Along]);
        }
        ImmutableArray<ClothAxis> axes = match.Groups["ways"].Value switch
        {
            "lengthwise" => [ClothAxis.Along],
            "crosswise" => [ClothAxis.Across],
            _ => [ClothAxis.Along, ClothAxis.Across],
        };
        return PointOf(match.Groups["second"].Value) is { } second ? new MatchRule(words, first, MatchTarget.Point, second, axes) : null;
    }

    private static MatchPoint? PointOf(string text)
    {
        int dot = text.LastIndexOf('.');
        return dot > 0 && dot < text.Length - 1 ? new MatchPoint(text[..dot].Trim(), text[(dot + 1)..].Trim()) : null;
    }

    private static Fault? FaultOf(MatchRule rule, ImmutableArray<JobPiece> pieces, ImmutableArray<Cloth> cloths)
    {
        MatchPoint[] points = rule.Second is null ? [rule.First] : [rule.First, rule.Second];
        foreach (MatchPoint point in points)
        {
            JobPiece[] sizes = [.. pieces.Where(piece => piece.Piece.Name == point.Piece)];
            if (sizes.Length == 0)
                return MatchFaults.UnknownPiece(point.Piece, [.. pieces.Select(piece => piece.Piece.Name).Distinct()]);
            if (sizes.FirstOrDefault(piece => PiecePoints.Find(piece.Piece, point.Point) is null) is { } missing)
                return MatchFaults.UnknownPoint(missing.Piece.Title, point.Point, PiecePoints.NamesOn(missing.Piece));
        }
        if (rule.Second is not null && rule.Second.Piece == rule.First.Piece)
            return MatchFaults.SamePiece(rule.First.Piece);
        string[] names = [.. points.Select(point => pieces.First(piece => piece.Piece.Name == point.Piece).Cloth).Distinct()];
        if (names.Length > 1)
            return MatchFaults.TwoCloths(names[0], names[1]);
        return cloths.FirstOrDefault(cloth => cloth.Name == names[0]) is { } cloth ? FaultOf(rule, cloth) : null;
    }

    private static Fault? FaultOf(MatchRule rule, Cloth cloth)
    {
        if (rule.Target == MatchTarget.Border)
            return cloth.Border is null ? MatchFaults.NoBorder(cloth.Name) : null;
        if (rule.Axes.Contains(ClothAxis.Along) && cloth.Repeat?.Along is null)
            return MatchFaults.NoRepeat(cloth.Name, "along");
        return rule.Axes.Contains(ClothAxis.Across) && cloth.Repeat?.Across is null ? MatchFaults.NoRepeat(cloth.Name, "across") : null;
    }
}
