namespace Nestmark.Input.Quantities;

/// <summary>The messages about numbers, lengths and other quantities.</summary>
internal static class QuantityFaults
{
    public static Fault Empty() => new("Found nothing where a quantity was expected.", "Write a number, with a unit where it needs one.");

    public static Fault TooLong() => new("Found more text than a quantity can have.", "Write a number and a unit, as 1.5 cm.");

    public static Fault NotFinite(string text) => new($"Found \"{Shown(text)}\", which is no number.", "Write a plain number, as 1.5.");

    public static Fault NotANumber(string text) =>
        new($"Found \"{Shown(text)}\" where a number was expected.", "Write a number as 1.5, 5/8 or 2 1/4, and then its unit.");

    public static Fault DecimalComma(string text) =>
        new($"Found \"{Shown(text)}\" with a comma.", $"Write \"{Shown(text.Replace(',', '.'))}\": decimals take a point.");

    public static Fault Exponent(string text) =>
        new($"Found \"{Shown(text)}\" with an exponent.", "Write the number in plain digits, as 1500 or 0.5.");

    public static Fault TooLarge(string text) => new($"Found \"{Shown(text)}\", which is too large.", "Check the number and its unit.");

    public static Fault BadFraction(string text) =>
        new($"Found \"{Shown(text)}\" with a fraction that has no value.", "Write fractions as 5/8, with a whole number above zero below the line.");

    public static Fault UnknownUnit(string text, string unit) =>
        new($"Found \"{Shown(text)}\" with the unit \"{Shown(unit)}\"; expected {LengthUnits.Expected}.", "Write the length with one of these units, as 1.5 cm.");

    public static Fault LongerThanLimit(string text) =>
        new($"Found \"{Shown(text)}\", which is longer than 100 m.", "Check the number and its unit.");

    public static Fault NotAboveZero(string text) => new($"Found \"{Shown(text)}\"; expected a length above zero.", "Write the length that is meant.");

    public static Fault BelowZero(string text) => new($"Found \"{Shown(text)}\"; a length below zero makes no sense here.", "Write zero or more.");

    public static Fault Percent(string text) => new($"Found \"{Shown(text)}\"; expected a percentage from 0 % to 50 %.", "Write it as 5 %.");

    public static Fault Angle(string text) => new($"Found \"{Shown(text)}\"; expected an angle from 0 to 45 degrees.", "Write it as 2 deg.");

    public static Fault Direction(string text) => new($"Found \"{Shown(text)}\"; expected an angle from 0 to 360 degrees.", "Write it as 90 deg.");

    public static Fault Price(string text) => new($"Found \"{Shown(text)}\"; expected a price per length.", "Write it as 18.50 per m or 12 per yd.");

    public static Fault Size(string text) =>
        new($"Found \"{Shown(text)}\"; expected two lengths with an x between them.", "Write length x width, as 16 x 18 or 16 cm x 18 cm.");

    public static Fault Cut(string text) =>
        new($"Found \"{Shown(text)}\"; expected how often the piece is cut.", "Write 2, 1 pair, 2 pairs or 1 on fold.");

    public static Fault CutCount(string text) =>
        new($"Found \"{Shown(text)}\"; a piece is cut from 1 up to 1000 times.", "Write 2, 1 pair, 2 pairs or 1 on fold.");

    public static Fault Count(string text, string what) =>
        new($"Found \"{Shown(text)}\"; expected a whole number of {what} from 1 to 1000.", "Write it in plain digits, as 2.");

    public static Fault Ratio(string text) =>
        new($"Found \"{Shown(text)}\"; expected a number from 1 to 20.", "Write how many allowances long a corner point may be, as 2.5.");

    /// <summary>The user's text, kept short and free of control characters.</summary>
    public static string Shown(string text) => Shown(text, 40);

    /// <summary>The same, cut after so many characters.</summary>
    public static string Shown(string text, int longest)
    {
        string safe = new([.. text.Select(character => char.IsControl(character) || char.IsSurrogate(character) ? ' ' : character)]);
        return safe.Length > longest ? safe[..longest] + "…" : safe;
    }
}
