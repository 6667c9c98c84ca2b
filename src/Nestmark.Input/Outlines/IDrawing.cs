namespace Nestmark.Input.Outlines;

/// <summary>A loaded drawing of any format; gives pieces by name.</summary>
internal interface IDrawing
{
    /// <summary>The names a job can give after #, in the order of the file.</summary>
    IReadOnlyList<string> Names { get; }

    /// <summary>The sizes in which the drawing itself says that it holds a piece, in the order of the file; empty where it says none.</summary>
    IReadOnlyList<string> SizesOf(string name);

    /// <summary>Why the wish cannot be met, to be told where the job names it; or <c>null</c>.</summary>
    Fault? FaultOf(PieceWish wish);

    /// <summary>The piece, or <c>null</c> after problems. There must be no fault.</summary>
    /// <returns><see cref="DrawnPiece.DrawnAt"/> is the line alone, as ":12", or empty.</returns>
    DrawnPiece? Piece(PieceWish wish);
}
