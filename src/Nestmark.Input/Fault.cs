namespace Nestmark.Input;

/// <summary>What is wrong with a piece of the user's text, before its place is known.</summary>
/// <param name="What">What was found and what was expected; one sentence.</param>
/// <param name="Hint">The remedy; one sentence.</param>
internal sealed record Fault(string What, string Hint);
