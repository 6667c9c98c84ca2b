namespace Nestmark.Nesting;

/// <summary>What a cutter should know about a piece before cutting; not a fault.</summary>
/// <param name="Piece">Name of the piece.</param>
/// <param name="What">A sentence.</param>
/// <param name="Hint">What to do about it, a sentence; perhaps empty.</param>
public sealed record LayNote(string Piece, string What, string Hint);
