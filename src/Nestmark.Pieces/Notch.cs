using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A matching mark, carried square from the seam line out to the cutting line.</summary>
/// <param name="Name">Name within the piece; may be empty.</param>
/// <param name="OnSeamLine">Its place on the seam line.</param>
/// <param name="OnCuttingLine">Its place on the cutting line.</param>
public sealed record Notch(string Name, Point OnSeamLine, Point OnCuttingLine);
