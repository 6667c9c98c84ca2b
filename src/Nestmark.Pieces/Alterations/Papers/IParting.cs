using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A cut through a piece, and where the part beyond it goes.</summary>
internal interface IParting
{
    /// <summary>The lines along which the paper is cut: one to put paper in, two to take a strip out.</summary>
    ImmutableArray<StraightLine> Cuts { get; }

    /// <summary>Which part a place inside the piece belongs to.</summary>
    PaperSide SideOf(Vector place);

    /// <summary>Where the moved part's places go; a rigid motion.</summary>
    Vector Moved(Vector place);

    /// <summary>The points of an edge with their parts. Where the parts change, the point of the cut stands there for each part, so that both halves end on the cut.</summary>
    ImmutableArray<(PaperPoint Point, PaperSide Side)> Parted(PaperEdge edge);

    /// <summary>Whether an edge is drawn anew; otherwise it is left as cut.</summary>
    bool IsTrued(PaperEdge edge);
}
