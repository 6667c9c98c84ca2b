using Nestmark.Input.Yaml;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>What is cut of a piece from one cloth.</summary>
/// <param name="Cloth">Name of the cloth; empty takes the first.</param>
/// <param name="NamedAt">Where the cloth is named; <c>null</c> when it is not.</param>
/// <param name="NamedIn">The keys that lead there.</param>
/// <param name="Pattern">The piece without its shape, as it is cut from this cloth.</param>
/// <param name="Own">Keys that hold for this cloth only, and the keys that lead to them; <c>null</c> when there are none.</param>
internal sealed record ClothCut(string Cloth, JobNode? NamedAt, string NamedIn, PieceDraft Pattern, MapReader? Own);
