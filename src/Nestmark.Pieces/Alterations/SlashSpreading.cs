using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Slash and spread: the piece is cut along lines and opened, for fullness.</summary>
/// <remarks>The part with the fold, or else with the middle of the grainline, stays; an edge that is opened is drawn anew by the truing, the edge at a pivot is left as it is.</remarks>
public static class SlashSpreading
{
    /// <summary>The piece opened.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="slashes">One or more, opened one after another.</param>
    /// <param name="by">How much all of them open together, each the same part of it; above zero.</param>
    /// <param name="opening">About their ends, or parallel.</param>
    /// <param name="truing">How the opened edges are drawn anew.</param>
    public static AlterationResult Apply(PieceDraft draft, ImmutableArray<Slash> slashes, Length by, SlashOpening opening, SideTruing truing) =>
        Trying.With(draft, by, (paper, amount) => SlashParting.All(paper, slashes, amount.Micrometers, opening, truing));
}
