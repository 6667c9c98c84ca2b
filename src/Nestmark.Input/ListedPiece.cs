using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Input;

/// <summary>A piece of a drawing.</summary>
/// <param name="Name">What a job writes after #.</param>
/// <param name="Size">The size that the drawing says; empty where it says none.</param>
/// <param name="Width">Its extent along the drawing's x; a half piece opened out.</param>
/// <param name="Height">Its extent along the drawing's y.</param>
/// <param name="Said">What the drawing says of it in words, as "quantity 2".</param>
public sealed record ListedPiece(string Name, string Size, Length Width, Length Height, ImmutableArray<string> Said);
