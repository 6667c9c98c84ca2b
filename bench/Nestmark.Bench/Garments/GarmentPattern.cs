using Nestmark.Pieces;

namespace Nestmark.Bench.Garments;

/// <summary>One pattern piece of the invented coat, before sizes and chance.</summary>
/// <param name="Name">Name of the piece.</param>
/// <param name="Cut">How often it is cut for one garment.</param>
/// <param name="Outline">Seam line in millimeters, counter-clockwise, x along the grain: corners with commas between, each "x y" or "x y first second", the last two being how far the edge that follows swells outward in its first and second half.</param>
/// <param name="HemMillimeters">Allowance of edge B-C where it differs from the others; 0 where it does not.</param>
internal sealed record GarmentPattern(string Name, CutQuantity Cut, string Outline, double HemMillimeters);
