using Nestmark.Pieces;

namespace Nestmark.Input.Outlines;

/// <summary>What a job wants from a drawing.</summary>
/// <param name="Name">The name after #, sizes filled in.</param>
/// <param name="Size">The size, where the drawing itself says sizes; else empty.</param>
/// <param name="Line">Which line the job takes the outline for; <c>null</c> leaves it to the drawing.</param>
/// <param name="Cut">How the job cuts it: a drawn half is opened out unless it is cut on the fold.</param>
internal readonly record struct PieceWish(string Name, string Size, OutlineMeaning? Line, CutQuantity Cut);
