using Nestmark.Geometry;

namespace Nestmark.Yardage.Seams;

/// <summary>An alteration that took a seam apart, or brought it together again, in one size.</summary>
/// <param name="Size">The size; empty when no piece of the seam has sizes.</param>
/// <param name="Kind">Which of the two.</param>
/// <param name="Alteration">The alteration in words, with the pieces that it changed: "front: widened 2 cm at the fold".</param>
/// <param name="Difference">First side less second after it, what is taken up counted.</param>
/// <param name="Where">Where the user's file asks for it.</param>
public sealed record SeamTurn(string Size, SeamTurnKind Kind, string Alteration, Length Difference, Place Where);
