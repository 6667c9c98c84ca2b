using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A fold of the lay.</summary>
/// <param name="Side">Where it lies, and so on which side of it the cloth is.</param>
/// <param name="At">Its y; for a fold across the cloth its x.</param>
/// <param name="Band">Index of the band that begins at it.</param>
public sealed record LayFold(FoldSide Side, Length At, int Band);
