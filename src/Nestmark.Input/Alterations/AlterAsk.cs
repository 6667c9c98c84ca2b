using System.Collections.Immutable;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>What is asked of one or more pieces.</summary>
/// <param name="Node">Where refusals point.</param>
/// <param name="Item">Path of that place.</param>
/// <param name="Sizes">For these sizes only; empty for all.</param>
/// <param name="Done">In words, lower case: "widened 2 cm at the fold".</param>
/// <param name="Apply">The alteration.</param>
internal sealed record AlterAsk(JobNode Node, string Item, ImmutableArray<string> Sizes, string Done, Func<PieceDraft, AlterationResult> Apply)
{
    /// <summary>What is said besides about a piece that was altered; empty for nothing.</summary>
    public Func<PieceDraft, string> Note { get; init; } = _ => "";
}
