using System.Globalization;
using System.Text;

namespace Nestmark.Output.Fonts;

/// <summary>Makes any text of the user's safe to write.</summary>
internal static class CleanText
{
    /// <summary>One line: line breaks and tabs become blanks, other control signs and halves of letters vanish.</summary>
    public static string OneLine(string text)
    {
        if (Ascii.IsValid(text) && !text.Any(char.IsControl))
            return text.Trim();
        StringBuilder builder = new(text.Length);
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (rune.Value is '\n' or '\r' or '\t')
                builder.Append(' ');
            else if (IsWritable(rune))
                builder.Append(rune.ToString());
        }
        return builder.ToString().Trim();
    }

    private static bool IsWritable(Rune rune) =>
        Rune.GetUnicodeCategory(rune) is not (UnicodeCategory.Control or UnicodeCategory.Format) && rune.Value is not (0xFFFD or 0xFFFE or 0xFFFF);
}
