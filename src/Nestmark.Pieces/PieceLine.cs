using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>A line drawn on a piece and not cut: a dart leg, a pocket place, a pleat.</summary>
/// <param name="Label">Text beside it; may be empty.</param>
/// <param name="Points">Two points or more.</param>
public sealed record PieceLine(string Label, ImmutableArray<Point> Points);
