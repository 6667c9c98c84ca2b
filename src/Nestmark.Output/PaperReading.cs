namespace Nestmark.Output;

/// <summary>A paper as asked for, or why there is none.</summary>
/// <param name="Paper">The paper; <c>null</c> when the name is not known.</param>
/// <param name="Message">What is wrong and what exists; empty when there is a paper.</param>
public sealed record PaperReading(Paper? Paper, string Message);
