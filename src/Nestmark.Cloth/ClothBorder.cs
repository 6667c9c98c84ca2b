using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A border printed along an edge of the cloth, measured after the first wash.</summary>
/// <param name="Edge">Which edge.</param>
/// <param name="From">From the edge of the cloth, selvage included, to where the border begins; a hem lies there.</param>
/// <param name="Depth">From there to where it ends.</param>
public sealed record ClothBorder(BorderEdge Edge, Length From, Length Depth);
