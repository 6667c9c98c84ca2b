namespace Nestmark.Pieces.Alterations;

/// <summary>A straight line across a piece, at which it is altered.</summary>
public abstract record AlterLine;
