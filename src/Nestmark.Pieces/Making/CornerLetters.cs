using System.Globalization;

namespace Nestmark.Pieces.Making;

/// <summary>The letters of corners in their order: A, B … Z, AA, AB …</summary>
internal static class CornerLetters
{
    /// <summary>The letter of a number from 0.</summary>
    public static string Of(int index)
    {
        string letter = ((char)('A' + index % 26)).ToString(CultureInfo.InvariantCulture);
        return index < 26 ? letter : Of(index / 26 - 1) + letter;
    }

    /// <summary>The number of a letter, from 0.</summary>
    public static int IndexOf(string letter) => letter.Aggregate(0, (sum, character) => sum * 26 + character - 'A' + 1) - 1;
}
