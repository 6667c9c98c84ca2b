using System.Collections.Immutable;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Seams;

namespace Nestmark.Input.Drafting;

/// <summary>A length that a draft is made from: plain, along edges of other pieces, or a sum of both; perhaps another one for each size.</summary>
/// <param name="BySize">The sum for each size; one with an empty size serves all.</param>
/// <param name="Node">Where it stands.</param>
/// <param name="Item">The key it belongs to.</param>
internal sealed record Measure(ImmutableArray<(string Size, ImmutableArray<SeamTerm> Terms)> BySize, JobNode Node, string Item)
{
    /// <summary>Whether it differs from size to size by itself.</summary>
    public bool IsBySize => BySize.Any(entry => entry.Size.Length > 0);

    /// <summary>Names of the pieces along which it is measured.</summary>
    public IEnumerable<string> Pieces => BySize.SelectMany(entry => entry.Terms).Where(term => term.IsRun).Select(term => term.Piece);
}
