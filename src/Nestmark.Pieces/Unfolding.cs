namespace Nestmark.Pieces;

/// <summary>Opens a piece that lies on the fold to the whole piece it becomes.</summary>
public static class Unfolding
{
    /// <summary>The whole piece: the half and its mirror image about y = 0, without a seam between them; its fold edge becomes its center line.</summary>
    /// <param name="half">A piece with a fold edge.</param>
    /// <exception cref="ArgumentException">The piece has no fold edge.</exception>
    public static Piece Unfold(Piece half) => throw new NotImplementedException(half.Name);
}
