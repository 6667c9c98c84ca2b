namespace Nestmark.Pieces;

/// <summary>Turns a draft into a piece: corners lettered, allowances added, grain along x, fold edge on y = 0.</summary>
public static class PieceMaking
{
    /// <summary>Makes the piece, or says everything that stands in its way.</summary>
    /// <param name="draft">As read; not changed.</param>
    public static PieceResult Make(PieceDraft draft) => throw new NotImplementedException(draft.Name);
}
