using System.Collections.Immutable;

namespace Nestmark.Input.Alterations;

/// <summary>The drawn pieces of a job on their way through the alterations.</summary>
/// <param name="Start">As read and graded.</param>
/// <param name="Stages">After each alteration that changed something.</param>
internal sealed record AlterHistory(ImmutableArray<DraftedPiece> Start, ImmutableArray<AlterStage> Stages)
{
    /// <summary>Nothing was altered.</summary>
    public static AlterHistory None { get; } = new([], []);
}
