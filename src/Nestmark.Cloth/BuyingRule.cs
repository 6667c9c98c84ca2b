using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>How the shop sells the cloth.</summary>
/// <param name="Step">Lengths are sold in whole steps; above zero.</param>
/// <param name="Price">Price, or <c>null</c> when not known.</param>
public sealed record BuyingRule(Length Step, ClothPrice? Price);
