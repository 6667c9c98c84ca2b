using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A line without ends.</summary>
/// <param name="Place">On the line.</param>
/// <param name="Direction">Length one.</param>
internal readonly record struct StraightLine(Vector Place, Vector Direction)
{
    /// <summary>Signed distance: above zero to the left of the direction.</summary>
    public double SideOf(Vector place) => Direction.Cross(place - Place);
}
