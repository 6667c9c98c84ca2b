using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Moves corners; the edges between them follow evenly, so that straight edges stay straight and curves stay smooth.</summary>
internal static class CornerMoves
{
    /// <summary>The piece with some corners moved; what is drawn inside stays.</summary>
    public static Paper Of(Paper paper, Func<string, Vector> moveOf) => paper with
    {
        Edges = Paper.Closed([.. paper.Edges.Select(edge => edge.Stretched(moveOf(edge.From), moveOf(edge.To)))]),
    };

    /// <summary>The same, and what is drawn inside follows the outline.</summary>
    public static Paper WithInside(Paper paper, Func<string, Vector> moveOf)
    {
        Paper moved = Of(paper, moveOf);
        MeanValues weights = new([.. paper.Places], [.. moved.Places]);
        return moved with
        {
            Lines = [.. paper.Lines.Select(line => line with { Places = [.. line.Places.Select(weights.Follow)] })],
            Marks = [.. paper.Marks.Select(mark => mark with { Place = weights.Follow(mark.Place) })],
        };
    }
}
