using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;

namespace Nestmark.Tests.Nesting;

/// <summary>One layer of a lay: where it lies, and how it comes from the flat cloth, seen on its right side.</summary>
/// <param name="Sheet">Number of the flat cloth; a crosswise lay that was cut has two.</param>
/// <param name="Region">Where it lies, in micrometers of the lay.</param>
/// <param name="ToSheet">From the lay to the flat cloth.</param>
internal sealed record SheetLayer(int Sheet, Envelope Region, AffineTransformation ToSheet);
