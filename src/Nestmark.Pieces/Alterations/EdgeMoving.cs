using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Moves one edge without changing it; the edges beside it follow evenly. What is drawn inside stays.</summary>
public static class EdgeMoving
{
    /// <summary>The piece with the edge moved along and across the grain.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="edge">The edge, as "A-B".</param>
    /// <param name="along">Along the grain, toward the arrow's head; below zero away from it.</param>
    /// <param name="across">Across the grain, away from the fold or to the left of the arrow.</param>
    public static AlterationResult Apply(PieceDraft draft, string edge, Length along, Length across) =>
        Shifts.Try(draft, along, across, (paper, shift) => Moved(paper, edge, _ => shift));

    /// <summary>The piece with the edge moved square to the straight line between its corners.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="edge">The edge, as "A-B".</param>
    /// <param name="by">Outward; below zero inward.</param>
    public static AlterationResult Outward(PieceDraft draft, string edge, Length by) => Trying.With(draft, by, (paper, amount) =>
        Moved(paper, edge, found => amount.Micrometers * (found.End - found.Start).Unit.Right));

    private static PaperOutcome Moved(Paper paper, string name, Func<PaperEdge, Vector> shiftOf)
    {
        int index = paper.IndexOf(name);
        if (index < 0)
            return AlterationFaults.NoSuchEdge(name, paper.EdgeNames);
        PaperEdge edge = paper.Edges[index];
        Vector shift = shiftOf(edge);
        return CornerMoves.Of(paper, letter => letter == edge.From || letter == edge.To ? shift : default);
    }
}
