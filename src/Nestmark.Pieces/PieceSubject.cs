namespace Nestmark.Pieces;

/// <summary>The part of a piece's description that a fault is about; tells the reader of the file where to point.</summary>
public enum PieceSubject
{
    /// <summary>The outline itself.</summary>
    Outline,

    /// <summary>The cut instruction.</summary>
    Cut,

    /// <summary>The allowance of every edge.</summary>
    Seam,

    /// <summary>The allowances of single edges.</summary>
    Edges,

    /// <summary>The fold edge.</summary>
    Fold,

    /// <summary>The grainline.</summary>
    Grain,

    /// <summary>A notch, line or mark.</summary>
    Marks,
}
