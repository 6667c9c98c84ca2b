namespace Nestmark.Pieces.Alterations;

/// <summary>A line between two places of a piece, and straight on beyond them.</summary>
/// <param name="From">One place.</param>
/// <param name="To">Another place.</param>
public sealed record LineBetween(AlterPlace From, AlterPlace To) : AlterLine;
