using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>The seam line of a panel as it lies to the grain.</summary>
/// <param name="Vertices">Counter-clockwise.</param>
/// <param name="HemStart">Corner where the hem starts, counter-clockwise.</param>
/// <param name="WaistStart">Corner where the waist starts, counter-clockwise.</param>
/// <param name="FoldLine">Its edge on the fold; <c>null</c> for a whole panel.</param>
internal sealed record CirclePanelOutline(ImmutableArray<OutlineVertex> Vertices, Point HemStart, Point WaistStart, Segment? FoldLine);
