using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations;

/// <summary>Why an alteration cannot be made.</summary>
/// <param name="What">What stands in the way, a sentence without the piece's name.</param>
/// <param name="Hint">What to do about it.</param>
public sealed record AlterationFault(string What, string Hint)
{
    /// <summary>The largest amount that works, rounded down to a micrometer; <c>null</c> where no amount does or the amount is not the matter.</summary>
    public Length? Largest { get; init; }
}
