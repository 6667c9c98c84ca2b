using System.Collections.Immutable;
using Nestmark.Yardage;

namespace Nestmark.Input.Alterations;

/// <summary>The drawn pieces of a job as they stood after one of its alterations.</summary>
/// <param name="Alteration">The alteration in words, with the pieces that it changed.</param>
/// <param name="Where">Where the file asks for it.</param>
/// <param name="Pieces">All drawn pieces after it.</param>
internal sealed record AlterStage(string Alteration, Place Where, ImmutableArray<DraftedPiece> Pieces)
{
    /// <summary>The stage that an alteration leads to; <c>null</c> where it changed nothing.</summary>
    /// <param name="before">The pieces before it.</param>
    /// <param name="after">The pieces after it.</param>
    public static AlterStage? Of(ImmutableArray<DraftedPiece> before, ImmutableArray<DraftedPiece> after)
    {
        DraftedPiece[] changed = [.. after.Where(piece => !before.Contains(piece) && !piece.Changes.IsEmpty)];
        if (changed.Length == 0)
            return null;
        string names = string.Join(", ", changed.Select(piece => piece.Draft.Name).Distinct());
        PieceChange change = changed[0].Changes[^1];
        string what = char.ToLowerInvariant(change.What[0]) + change.What[1..].TrimEnd('.');
        return new AlterStage($"{names}: {what}", change.Where, after);
    }
}
