namespace Nestmark.Pieces;

/// <summary>Why a draft is not a piece, or what was mended in it.</summary>
/// <param name="Subject">Which part of the draft it is about.</param>
/// <param name="Weight">Whether the piece can still be used.</param>
/// <param name="What">What is wrong, a sentence without the piece's name.</param>
/// <param name="Hint">What to do about it.</param>
public sealed record PieceFault(PieceSubject Subject, FaultWeight Weight, string What, string Hint);
