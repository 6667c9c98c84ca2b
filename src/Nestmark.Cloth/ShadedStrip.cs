using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A strip along the whole lay where the cloth is off-color, as beside some selvages; pieces that bear flaws may lie on it.</summary>
/// <param name="Low">Lower edge.</param>
/// <param name="High">Upper edge.</param>
public readonly record struct ShadedStrip(Length Low, Length High);
