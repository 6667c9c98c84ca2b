using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations;

/// <summary>A line square to the way of an alteration: across the grain for lengthening, along it for widening.</summary>
/// <param name="From">Where the distance is taken from: a corner's letter, <c>head</c> or <c>tail</c> of the grain arrow (the piece's outermost place there), or <c>fold</c>.</param>
/// <param name="Toward">The corner toward which it is taken; empty takes the side where the piece reaches farther.</param>
/// <param name="Distance">Along the grain for lengthening, across it for widening; zero or more.</param>
public sealed record LevelLine(string From, string Toward, Length Distance) : AlterLine;
