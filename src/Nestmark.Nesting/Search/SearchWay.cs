using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>One allowed turn of a demand, in one band or at one fold of the lay.</summary>
/// <param name="Turn">The turn.</param>
/// <param name="Shape">Index of the shape that others keep off.</param>
/// <param name="Sensitive">Index of the shape that keeps off flaws and the edges of a remnant.</param>
/// <param name="Heading">0 or 1, see <see cref="NapHeading"/>.</param>
/// <param name="Room">Bounds of the true cutting line in this turn; must stay on the lay.</param>
/// <param name="Seat">Where it may lie.</param>
internal readonly record struct SearchWay(Turn Turn, int Shape, int Sensitive, int Heading, Box Room, Seat Seat)
{
    /// <summary>Whether it leans from the grain, which lies along, across or at 45 degrees.</summary>
    public bool IsTilted => Turn.Angle.TotalDegrees % 45 != 0;
}
