using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces;

/// <summary>Makes a piece again with the narrower allowances that its maker permits for want of cloth.</summary>
public static class AllowanceNarrowing
{
    /// <summary>What an allowance is before it becomes narrower; <c>null</c> when the piece has no such edge.</summary>
    /// <param name="draft">What the piece was made from.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="least">One of the draft's <see cref="PieceDraft.Least"/>.</param>
    public static Length? Now(PieceDraft draft, Piece piece, LeastAllowance least) =>
        least.Edge.Length == 0 ? draft.Seam : piece.Edges.FirstOrDefault(edge => edge.Name == least.Edge)?.Allowance;

    /// <summary>The piece with some allowances at their least; every mark that was added to it later stays.</summary>
    /// <param name="draft">What the piece was made from; its outline is the seam line.</param>
    /// <param name="piece">The piece as made, perhaps with notches and lines added.</param>
    /// <param name="chosen">Which allowances; those that are no wider already change nothing.</param>
    /// <returns><c>null</c> when no piece can be made so.</returns>
    public static Piece? Of(PieceDraft draft, Piece piece, IEnumerable<LeastAllowance> chosen)
    {
        PieceDraft narrowed = chosen.Where(least => Now(draft, piece, least) > least.Width).Aggregate(draft, With);
        if (PieceMaking.Make(narrowed).Piece is not { } made)
            return null;
        Point shift = made.Corners[0].Place - piece.Corners[0].Place;
        ImmutableArray<Point> seamLine = [.. made.SeamLine.Outer, made.SeamLine.Outer[0]];
        return made with
        {
            Notches = [.. piece.Notches.Select(notch => NotchCarrying.Carried(notch.Name, Vector.Of(notch.OnSeamLine + shift), seamLine, made.CuttingLine))],
            Lines = [.. piece.Lines.Select(line => line with { Points = [.. line.Points.Select(point => point + shift)] })],
        };
    }

    private static PieceDraft With(PieceDraft draft, LeastAllowance least)
    {
        if (least.Edge.Length == 0)
            return draft with { Seam = least.Width };
        string[] letters = least.Edge.Split('-');
        return draft.Edges.Any(IsMeant)
            ? draft with { Edges = [.. draft.Edges.Select(edge => IsMeant(edge) ? edge with { Width = least.Width } : edge)] }
            : draft with { Edges = [.. draft.Edges, new EdgeAllowance(letters[0], letters[1], least.Width, AllowanceEnds.Mitred)] };

        bool IsMeant(EdgeAllowance edge) => edge.From == letters[0] && edge.To == letters[1];
    }
}
