using System.Globalization;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>Areas in words.</summary>
internal static class AreaWords
{
    private const double SquareMillimetersPerSquareInch = 25.4 * 25.4;

    /// <summary>"1234.5 cm²" or "191.3 sq in".</summary>
    public static string Of(double squareMillimeters, MeasureSystem system) => system == MeasureSystem.Imperial
        ? string.Create(CultureInfo.InvariantCulture, $"{squareMillimeters / SquareMillimetersPerSquareInch:0.#} sq in")
        : string.Create(CultureInfo.InvariantCulture, $"{squareMillimeters / 100:0.#} cm²");
}
