namespace Nestmark.Yardage;

/// <summary>The cost of everything that is bought in one currency.</summary>
/// <param name="Cost">Sum of the costs.</param>
/// <param name="Currency">As the user wrote it; may be empty.</param>
public sealed record ShoppingTotal(decimal Cost, string Currency);
