using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using Nestmark.Geometry;
using Nestmark.Pieces.Seams;

namespace Nestmark.Input.Seams;

/// <summary>Reads what is measured along pieces: "front.A-B + 2 x back.C-D-E + 3 cm".</summary>
internal static class TermText
{
    private static readonly Regex Plus = new(@"\s\+\s", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    private static readonly Regex Times = new(@"^([0-9]{1,3})\s*[xX×]\s+(.*)$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    private static readonly Regex Corners = new(@"^[A-Z]{1,2}(\s*-\s*[A-Z]{1,2})+$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    /// <summary>The parts of a sum, blanks around each plus sign.</summary>
    public static Reading<ImmutableArray<SeamTerm>> Read(string text, JobContext context)
    {
        List<SeamTerm> terms = [];
        foreach (string part in Plus.Split(text))
        {
            Reading<SeamTerm> term = One(part.Trim(), context);
            if (term.Fault is not null)
                return new(default, term.Fault);
            terms.Add(term.Value!);
        }
        return new([.. terms], null);
    }

    private static Reading<SeamTerm> One(string text, JobContext context)
    {
        Match counted = Times.Match(text);
        int times = counted.Success ? int.Parse(counted.Groups[1].Value, CultureInfo.InvariantCulture) : 1;
        string rest = counted.Success ? counted.Groups[2].Value.Trim() : text;
        int point = rest.LastIndexOf('.');
        string corners = point < 0 ? "" : rest[(point + 1)..].Trim();
        if (times < 1)
            return new(null, SeamFaults.TimesZero(text));
        if (point > 0 && Corners.IsMatch(corners))
            return new(new SeamTerm(text, rest[..point].Trim(), [.. corners.Split('-').Select(letter => letter.Trim())], times, Length.Zero), null);
        Reading<Length> length = context.AboveZero(rest);
        if (length.Fault is null)
            return new(new SeamTerm(text, "", [], times, length.Value), null);
        return new(null, rest.Length > 0 && char.IsAsciiDigit(rest[0]) && corners.All(char.IsAsciiDigit) ? length.Fault : SeamFaults.TermForm(text));
    }
}
