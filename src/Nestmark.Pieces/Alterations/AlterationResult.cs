using System.Collections.Immutable;

namespace Nestmark.Pieces.Alterations;

/// <summary>An altered draft, or the fault that stands in its way.</summary>
/// <param name="Draft">The draft as altered; <c>null</c> exactly when there is a fault.</param>
/// <param name="Fault">Why it cannot be altered so.</param>
public sealed record AlterationResult(PieceDraft? Draft, AlterationFault? Fault)
{
    /// <summary>What should be known besides, each a sentence.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}
