namespace Nestmark.Pieces.Drafting;

/// <summary>A drafted piece, or why it cannot be drafted.</summary>
/// <param name="Shape">The piece; <c>null</c> exactly when something is wrong.</param>
/// <param name="What">What is wrong, a sentence; empty when nothing is.</param>
/// <param name="Hint">What to do about it.</param>
public sealed record DraftingResult(DraftedShape? Shape, string What, string Hint)
{
    internal static DraftingResult Of(DraftedShape shape) => new(shape, "", "");

    internal static DraftingResult Refused(string what, string hint) => new(null, what, hint);
}
