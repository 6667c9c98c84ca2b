using System.Globalization;
using Nestmark.Input.Quantities;

namespace Nestmark.Input.Outlines;

/// <summary>The messages about the true size of a drawing and the keys of drawings.</summary>
internal static class ScaleFaults
{
    public static Fault ScaleForm(string text) => new(
        $"Found the scale \"{QuantityFaults.Shown(text)}\"; expected a percentage, or the units of the drawing in an inch.",
        "Write scale: 104 % to make everything 4 % larger, or scale: 90 dpi for a drawing in px.");

    public static Fault PagesForm() => new(
        "Expected the pages as rows of numbers, the top row first.",
        "Write pages: [[1, 2, 3], [4, 5, 6]], with 0 where a page was left out.");

    public static Fault PageTwice(int page) => new(
        string.Create(CultureInfo.InvariantCulture, $"Page {page} stands twice among the tiles."), "Name each page once.");

    public static Fault DpiWithTrueSize() => new(
        "The drawing says its own size in mm, cm or in, so a scale in dpi has no meaning.", "Write a percentage, or take the scale out.");

    public static Fault DpiOfDxf() => new(
        "A DXF drawing has units of length, so a scale in dpi has no meaning.", "Write its unit, as unit: mm, or a percentage.");

    public static Fault NoSquare(string where) => new(
        $"No test square was found in the drawing: {where}.",
        "Give the square the class test-square or name its id, or take test_square out.");

    public static Fault NotSquare(double widthMillimeters, double heightMillimeters) => new(
        Text($"The test square measures {widthMillimeters:0.##} x {heightMillimeters:0.##} mm and is no square."),
        "Name a shape that is square; a drawing that was stretched cannot be used.");

    public static Fault WrongSize(double measuredMillimeters, double trueMillimeters, double oldRatio)
    {
        double measured = trueMillimeters / measuredMillimeters;
        (int written, int read) = TrapOf(measured);
        // The mix-up's own factor is more exact than a measure of a small square.
        double factor = written == 0 ? measured : (double)read / written;
        string trap = written == 0 ? "" : Text($", as if drawn at {written} dpi and read at {read}");
        string percent = Text($"{factor * oldRatio * 100:0.##} %");
        double off = Math.Abs(1 - measuredMillimeters / trueMillimeters) * 100;
        string direction = measuredMillimeters < trueMillimeters ? "small" : "large";
        return new(
            Text($"The test square measures {measuredMillimeters:0.##} mm and its true side is {trueMillimeters:0.##} mm: the drawing is {off:0.#} % too {direction}{trap}."),
            $"Check that this is the square, then write scale: {percent}.");
    }

    public static Fault SquareGivesScale(double unitsPerInch) => new(
        Text($"The drawing does not say its true size; by its test square it has {unitsPerInch:0.##} units in an inch{NameOf(unitsPerInch)}."),
        "Nothing needs to be done if the square was measured on the original.");

    public static Fault ScaleConfirmed(double measuredMillimeters) => new(
        Text($"The test square measures {measuredMillimeters:0.##} mm, as it should."), "Nothing needs to be done.");

    public static Fault Unchecked(string file) => new(
        $"The size of {QuantityFaults.Shown(file)} was not checked.",
        $"Give the true side of its test square: drawings: {{ {QuantityFaults.Shown(file)}: {{ test_square: 5 cm }} }}.");

    public static Fault Unused(string file) => new(
        $"No piece names {QuantityFaults.Shown(file)}.", "Check the name, or take the entry out.");

    /// <summary>The mix-up of 72, 90 and 96 units in an inch that explains a factor; zeros for none.</summary>
    /// <remarks>references/formats.md 3.1: programs write 72, 90 or 96.</remarks>
    private static (int Written, int Read) TrapOf(double factor)
    {
        int[] known = [72, 90, 96];
        foreach (int written in known)
        {
            foreach (int read in known)
            {
                if (written != read && Math.Abs((double)read / written / factor - 1) < 0.003)
                    return (written, read);
            }
        }
        return (0, 0);
    }

    private static string NameOf(double unitsPerInch) =>
        Array.Find([72.0, 90.0, 96.0], known => Math.Abs(known / unitsPerInch - 1) < 0.003) is > 0 and double found ? Text($", the usual {found:0} dpi") : "";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
