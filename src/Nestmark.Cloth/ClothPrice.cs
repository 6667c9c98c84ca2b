using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A price per length of cloth.</summary>
/// <param name="Amount">Money, zero or more.</param>
/// <param name="Per">The length it buys; above zero.</param>
/// <param name="Currency">As the user wrote it, perhaps empty.</param>
public sealed record ClothPrice(decimal Amount, Length Per, string Currency);
