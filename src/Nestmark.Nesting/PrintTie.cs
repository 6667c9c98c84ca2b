namespace Nestmark.Nesting;

/// <summary>A rule for one size and one direction, its points found: what the verifier checks.</summary>
/// <param name="Text">The rule as the user wrote it.</param>
/// <param name="Size">The size; may be empty.</param>
/// <param name="Axis">The direction.</param>
/// <param name="First">The point that is tied.</param>
/// <param name="Target">To what.</param>
/// <param name="Second">The other point, or <c>null</c>.</param>
public sealed record PrintTie(string Text, string Size, ClothAxis Axis, TiedPoint First, MatchTarget Target, TiedPoint? Second);
