using System.Globalization;
using Nestmark.Output.Drawings;

namespace Nestmark.Output.Tiles;

/// <summary>What one page shows of the marker.</summary>
/// <param name="Row">From 0, at the top.</param>
/// <param name="Column">From 0, at the left.</param>
/// <param name="Shown">All that is printed on the page, on the lay.</param>
/// <param name="Own">The part that no page to the left or above shows: from its left and top edge to where the next pages start.</param>
internal sealed record Tile(int Row, int Column, Area Shown, Area Own)
{
    /// <summary>Row letter and column number: "A1" at the top left.</summary>
    public string Name => string.Create(CultureInfo.InvariantCulture, $"{Letters(Row)}{Column + 1}");

    private static string Letters(int row) => row < 26
        ? ((char)('A' + row)).ToString()
        : Letters(row / 26 - 1) + (char)('A' + row % 26);
}
