using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A place on a cloth to avoid: a spot, a hole, a band.</summary>
/// <param name="Name">As the user calls it.</param>
/// <param name="Area">x from the cut end where the lay begins, y from the near edge of the cloth, its selvage included; of the washed cloth, spread flat.</param>
public sealed record ClothFlaw(string Name, Polygon Area);
