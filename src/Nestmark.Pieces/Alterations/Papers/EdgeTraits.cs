using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>What belongs to an edge, wherever its corners go.</summary>
/// <param name="Width">Its own allowance; <c>null</c> takes the piece's.</param>
/// <param name="Ends">How its own allowance ends.</param>
/// <param name="Kind">Cut or fold.</param>
internal sealed record EdgeTraits(Length? Width, AllowanceEnds Ends, EdgeKind Kind)
{
    public static EdgeTraits Plain { get; } = new(null, AllowanceEnds.Mitred, EdgeKind.Cut);
}
