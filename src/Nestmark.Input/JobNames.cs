namespace Nestmark.Input;

/// <summary>Which names pieces, cloths and sizes may have: they are printed, and become parts of keys.</summary>
internal static class JobNames
{
    private const int Longest = 40;

    /// <summary>1 to 40 letters, digits, blanks, hyphens, underscores, points, slashes or plus signs, without blanks at the ends.</summary>
    public static bool IsGood(string name) =>
        name.Length is > 0 and <= Longest && name.Trim() == name
        && name.All(character => char.IsLetterOrDigit(character) || character is ' ' or '-' or '_' or '.' or '/' or '+');
}
