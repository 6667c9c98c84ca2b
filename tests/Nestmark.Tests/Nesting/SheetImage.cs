
namespace Nestmark.Tests.Nesting;

/// <summary>What one layer of one placement gives, on the flat cloth seen on its right side.</summary>
/// <param name="Placement">Index of the placement.</param>
/// <param name="Sheet">Number of the flat cloth.</param>
/// <param name="Shape">What is cut out.</param>
/// <param name="IsMirrored">Whether it is the mirror image of the piece as drawn.</param>
/// <param name="GrainX">Component along the cloth of its grain arrow.</param>
internal sealed record SheetImage(int Placement, int Sheet, NetTopologySuite.Geometries.Geometry Shape, bool IsMirrored, double GrainX);
