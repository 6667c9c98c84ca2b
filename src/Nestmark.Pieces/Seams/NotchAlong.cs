namespace Nestmark.Pieces.Seams;

/// <summary>A notch on a run of edges.</summary>
/// <param name="Name">The notch's name; may be empty.</param>
/// <param name="AlongMillimeters">Its distance from the start of the run along the seam line.</param>
public sealed record NotchAlong(string Name, double AlongMillimeters);
