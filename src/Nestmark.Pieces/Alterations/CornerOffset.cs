using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations;

/// <summary>By how much a corner of one size lies off the base size.</summary>
/// <param name="Along">Along the grain, toward the arrow's head.</param>
/// <param name="Across">Across the grain, away from the fold or to the left of the arrow.</param>
public readonly record struct CornerOffset(Length Along, Length Across);
