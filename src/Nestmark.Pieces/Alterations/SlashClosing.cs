using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Alterations.Papers;

namespace Nestmark.Pieces.Alterations;

/// <summary>Slash and close: the piece is cut along lines and overlapped, to take fullness out. The opposite of <see cref="SlashSpreading"/>.</summary>
public static class SlashClosing
{
    /// <summary>The piece closed.</summary>
    /// <param name="draft">A draft that can be made into a piece.</param>
    /// <param name="slashes">One or more, closed one after another.</param>
    /// <param name="by">How much all of them overlap together, each the same part of it; above zero.</param>
    /// <param name="opening">About their ends, or parallel.</param>
    /// <param name="truing">How the closed edges are drawn anew.</param>
    public static AlterationResult Apply(PieceDraft draft, ImmutableArray<Slash> slashes, Length by, SlashOpening opening, SideTruing truing) =>
        Trying.With(draft, by, (paper, amount) => SlashParting.All(paper, slashes, -amount.Micrometers, opening, truing));
}
