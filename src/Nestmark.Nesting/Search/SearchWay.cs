using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>One allowed turn of a demand.</summary>
/// <param name="Turn">The turn.</param>
/// <param name="Shape">Index of its shape.</param>
/// <param name="Heading">0 or 1, see <see cref="NapHeading"/>.</param>
/// <param name="Room">Bounds of the true cutting line in this turn; must stay on the lay.</param>
internal readonly record struct SearchWay(Turn Turn, int Shape, int Heading, Box Room);
