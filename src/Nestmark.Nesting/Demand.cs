using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>One placement that a marker must hold.</summary>
/// <param name="Piece">The piece as it is laid: a half for the fold, or unfolded.</param>
/// <param name="Size">The size it is cut for; may be empty.</param>
/// <param name="Copy">Counts the placements of this piece and size, from 1.</param>
/// <param name="Layers">Layers of cloth that it cuts.</param>
/// <param name="Contact">Whether its fold edge lies on a fold.</param>
/// <param name="Turns">Every way it may lie; one or more.</param>
/// <param name="NapGroup">Demands with the same name here, other than empty, keep one way up: half turns against each other are forbidden.</param>
public sealed record Demand(
    Piece Piece, string Size, int Copy, int Layers, FoldContact Contact, ImmutableArray<Turn> Turns, string NapGroup)
{
    /// <summary>What must keep off the flaws.</summary>
    public FlawRule Flaws { get; init; } = FlawRule.Avoid;

    /// <summary>How the print holds it; <c>null</c> when nothing is to match.</summary>
    public PrintHold? Hold { get; init; }
}
