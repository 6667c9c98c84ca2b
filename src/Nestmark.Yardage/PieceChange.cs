using System.Collections.Immutable;

namespace Nestmark.Yardage;

/// <summary>What one alteration did to one piece in one size; measured along the seam line.</summary>
/// <param name="What">In words with measures, a sentence without the piece's name: "Widened 2 cm at the fold, 4 cm in all."</param>
/// <param name="AreaBeforeSquareMillimeters">Area inside the seam line before; a piece on the fold counts as drawn, half.</param>
/// <param name="AreaAfterSquareMillimeters">The same after.</param>
/// <param name="Edges">The edges that became longer or shorter, are new or are gone; in the order of the altered piece, those that are gone last.</param>
/// <param name="Where">Where the user's file asks for it.</param>
public sealed record PieceChange(
    string What, double AreaBeforeSquareMillimeters, double AreaAfterSquareMillimeters, ImmutableArray<EdgeChange> Edges, Place Where);
