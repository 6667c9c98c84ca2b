using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>Gives every edge of an outline its allowance.</summary>
internal static class EdgeWidths
{
    /// <summary>One allowance an edge, in the order of the edges; says which names are wrong.</summary>
    public static ImmutableArray<EdgeAllowance> Of(PieceDraft draft, SeamOutline outline, int? fold, ICollection<PieceFault> faults)
    {
        Length usual = draft.Meaning == OutlineMeaning.SeamLine ? draft.Seam : Length.Zero;
        EdgeAllowance[] widths = [.. outline.Edges.Select(edge => new EdgeAllowance(edge.From, edge.To, usual, AllowanceEnds.Mitred))];
        HashSet<int> named = [];
        foreach (EdgeAllowance allowance in draft.Edges)
        {
            int index = Array.FindIndex(widths, edge => edge.From == allowance.From && edge.To == allowance.To);
            string name = allowance.From + "-" + allowance.To;
            if (index < 0)
                faults.Add(PieceFaults.NoSuchEdge(name, outline.EdgeNames));
            else if (!named.Add(index))
                faults.Add(PieceFaults.EdgeTwice(name));
            else if (index == fold && allowance.Width > Length.Zero)
                faults.Add(PieceFaults.FoldWithAllowance(name));
            else if (draft.Meaning == OutlineMeaning.SeamLine)
                widths[index] = allowance;
        }
        if (draft.Meaning == OutlineMeaning.CuttingLine && draft.Edges.Any(edge => edge.Width > Length.Zero))
            faults.Add(PieceFaults.NothingAddedToCuttingLine());
        if (fold is int onFold)
            widths[onFold] = widths[onFold] with { Width = Length.Zero, Ends = AllowanceEnds.Mitred };
        return [.. widths];
    }
}
