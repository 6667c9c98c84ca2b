using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>What bias strip is wanted.</summary>
/// <param name="Total">Length of the joined strip; above zero.</param>
/// <param name="Width">Width as cut; above zero. A double-fold binding takes four finished widths.</param>
/// <param name="Seam">Allowance of each join.</param>
public sealed record BiasMeasures(Length Total, Length Width, Length Seam);
