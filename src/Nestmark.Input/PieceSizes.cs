using System.Collections.Immutable;
using Nestmark.Input.Alterations;
using Nestmark.Input.Yaml;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>The key sizes of a piece: the sizes of the job in which it is cut.</summary>
internal static class PieceSizes
{
    /// <summary>The sizes named; empty for all. Reports those that no outline could be of.</summary>
    public static ImmutableArray<string> Read(MapReader piece, ImmutableArray<SizeCount> jobSizes)
    {
        ImmutableArray<TextNode> named = new AlterEntry(piece, "sizes", []).Names("sizes");
        string[] known = [.. jobSizes.Select(count => count.Size)];
        foreach (TextNode size in named.Where(_ => known is [""]))
            piece.Context.Error(size, piece.PathOf("sizes"), JobFaults.PieceSizeWithoutSizes());
        foreach (TextNode size in named.Where(size => !JobNames.IsGood(size.Text)))
            piece.Context.Error(size, piece.PathOf("sizes"), JobFaults.BadName(size.Text));
        return [.. named.Select(size => size.Text).Distinct()];
    }

    /// <summary>The sizes that come of one drawn in a size: itself if it is cut, or each of those named where it serves every size.</summary>
    public static IEnumerable<string> Of(string drawn, ImmutableArray<string> named) =>
        named.IsEmpty || named.Contains(drawn) ? [drawn] : drawn.Length == 0 ? named : [];
}
