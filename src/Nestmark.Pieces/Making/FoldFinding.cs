namespace Nestmark.Pieces.Making;

/// <summary>Finds the edge that lies on the fold.</summary>
internal static class FoldFinding
{
    private const double NearMicrometers = 1_000;
    private const double StraightMicrometers = 100;

    /// <summary>Bends below this come from rounding a slanted straight edge to whole micrometers and need no word.</summary>
    private const double RoundingMicrometers = 2;

    /// <summary>The number of the fold edge, or <c>null</c> for none; says what is wrong with it.</summary>
    public static int? Find(PieceDraft draft, SeamOutline outline, ICollection<PieceFault> faults)
    {
        bool given = draft.FoldLine is not null || draft.FoldEdge.Length > 0;
        if (draft.Cut.Kind != CutKind.OnFold)
        {
            if (given)
                faults.Add(PieceFaults.FoldNotWanted());
            return null;
        }
        if (!given)
        {
            faults.Add(PieceFaults.FoldMissing(outline.EdgeNames));
            return null;
        }
        int? index = draft.FoldLine is { } line ? Along(line, outline, faults) : Named(draft.FoldEdge, outline, faults);
        return index is int found && IsStraight(outline.Edges[found], faults) ? found : null;
    }

    private static int? Named(string name, SeamOutline outline, ICollection<PieceFault> faults)
    {
        int index = outline.Edges.ToList().FindIndex(edge => edge.Name == name);
        if (index >= 0)
            return index;
        faults.Add(PieceFaults.NoSuchFoldEdge(name, outline.EdgeNames));
        return null;
    }

    private static int? Along(Segment line, SeamOutline outline, ICollection<PieceFault> faults)
    {
        Vector start = Vector.Of(line.Start);
        Vector end = Vector.Of(line.End);
        if ((end - start).Norm <= NearMicrometers)
        {
            faults.Add(PieceFaults.FoldWithoutLength());
            return null;
        }
        Vector[] places = [start, 0.5 * (start + end), end];
        (double distance, int index) = outline.Edges.Select((edge, i) => (places.Max(edge.DistanceMicrometers), i)).Min();
        if (distance > NearMicrometers)
        {
            faults.Add(PieceFaults.FoldOffOutline(outline.EdgeNames));
            return null;
        }
        if (IsShorter(line, outline.Edges[index]))
            faults.Add(PieceFaults.FoldLengthened(outline.Edges[index].Name));
        return index;
    }

    private static bool IsShorter(Segment line, OutlineEdge edge) =>
        (Vector.Of(line.End) - Vector.Of(line.Start)).Norm < (Vector.Of(edge.Points[^1]) - Vector.Of(edge.Points[0])).Norm - 2 * NearMicrometers;

    private static bool IsStraight(OutlineEdge edge, ICollection<PieceFault> faults)
    {
        double bow = edge.BowMicrometers;
        if (bow > StraightMicrometers)
            faults.Add(PieceFaults.FoldNotStraight(edge.Name));
        else if (bow > RoundingMicrometers)
            faults.Add(PieceFaults.FoldStraightened(edge.Name));
        return bow <= StraightMicrometers;
    }
}
