using System.Collections.Immutable;

namespace Nestmark.Pieces.Alterations;

/// <summary>A cut straight through a piece from one place of its outline to another; opened about its end, the end is not cut through.</summary>
/// <param name="From">Where it is opened.</param>
/// <param name="To">Where it ends.</param>
public sealed record Slash(AlterPlace From, AlterPlace To)
{
    /// <summary>Several slashes at even distances along an edge.</summary>
    /// <param name="fromEdge">The edge that is opened.</param>
    /// <param name="to">An edge, on which the ends stand at even distances too, running against the first; or a corner, where all end.</param>
    /// <param name="count">1 or more.</param>
    /// <exception cref="ArgumentException">The count is below one.</exception>
    public static ImmutableArray<Slash> Evenly(string fromEdge, string to, int count)
    {
        if (count < 1)
            throw new ArgumentException("A piece is slashed once or more.", nameof(count));
        return [.. Enumerable.Range(1, count).Select(i => (double)i / (count + 1)).Select(share => new Slash(
            AlterPlace.AtShare(fromEdge, share), to.Contains('-') ? AlterPlace.AtShare(to, 1 - share) : AlterPlace.Named(to)))];
    }
}
