using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>How the length of an edge changed along the seam line.</summary>
/// <param name="Name">The edge, as "A-B".</param>
/// <param name="Before">Its length before; <c>null</c> for a new edge.</param>
/// <param name="After">Its length after; <c>null</c> for an edge that is gone.</param>
public sealed record EdgeChange(string Name, Length? Before, Length? After);
