using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>One part of a side of a seam: a run of edges of a piece, so many times; or a plain length, as of elastic.</summary>
/// <param name="Text">As the user wrote it: "2 x front.A-B-C" or "40 cm".</param>
/// <param name="Piece">Name of the piece; empty for a plain length.</param>
/// <param name="Corners">Letters of the corners in the order of walking; two or more, or none for a plain length.</param>
/// <param name="Times">How often it counts; 1 or more.</param>
/// <param name="Plain">The plain length; zero for a run.</param>
public sealed record SeamTerm(string Text, string Piece, ImmutableArray<string> Corners, int Times, Length Plain)
{
    /// <summary>Whether it names edges of a piece.</summary>
    public bool IsRun => Piece.Length > 0;
}
