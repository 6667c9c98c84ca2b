using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>What a pocket bag set into a seam is made from.</summary>
/// <param name="Opening">Length of the opening; above zero.</param>
/// <param name="Width">From the seam into the garment; above zero.</param>
/// <param name="Depth">From the top of the bag to its bottom; longer than the opening and what is above it.</param>
/// <param name="Above">From the top of the bag to the opening; zero or more.</param>
/// <param name="Cut">How often it is cut; <c>null</c> for two pairs, which are two bags.</param>
public sealed record PocketMeasures(Length Opening, Length Width, Length Depth, Length Above, CutQuantity? Cut);
