namespace Nestmark.Input.Quantities;

/// <summary>A number at the start of a text, and what follows it.</summary>
/// <param name="Value">The number, fractions worked out.</param>
/// <param name="Rest">What follows, without blanks around it.</param>
internal sealed record ScannedNumber(decimal Value, string Rest);
