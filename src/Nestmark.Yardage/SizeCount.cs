namespace Nestmark.Yardage;

/// <summary>How many garments of a size the marker holds.</summary>
/// <param name="Size">The size; empty for a job without sizes.</param>
/// <param name="Garments">1 or more.</param>
public sealed record SizeCount(string Size, int Garments);
