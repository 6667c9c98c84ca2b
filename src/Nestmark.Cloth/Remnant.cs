using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A leftover of a cloth.</summary>
/// <param name="Name">As the user calls it.</param>
/// <param name="Cloth">Name of the cloth it is left of.</param>
/// <param name="Area">What can be cut from, right side up, its grain along x with the nap toward +x, box at the origin; holes allowed.</param>
public sealed record Remnant(string Name, string Cloth, Polygon Area);
