using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Opens or closes a piece along slashes, one after another.</summary>
internal static class SlashParting
{
    private const double OnOutlineMicrometers = 1_000;

    /// <summary>The piece with all slashes opened; below zero, closed.</summary>
    /// <param name="paper">The piece.</param>
    /// <param name="slashes">One or more.</param>
    /// <param name="micrometers">All together.</param>
    /// <param name="opening">Pivot or parallel.</param>
    /// <param name="truing">For the opened edges.</param>
    public static PaperOutcome All(Paper paper, ImmutableArray<Slash> slashes, double micrometers, SlashOpening opening, SideTruing truing)
    {
        PaperOutcome outcome = paper;
        for (int i = 0; i < slashes.Length && outcome.Paper is { } tagged; i++)
            outcome = Tagged(tagged, slashes[i], paper, TagOf(i));
        for (int i = 0; i < slashes.Length && outcome.Paper is { } opened; i++)
            outcome = One(opened, TagOf(i), micrometers / slashes.Length, opening, truing);
        return outcome;
    }

    private static string TagOf(int index) => string.Create(CultureInfo.InvariantCulture, $"({index})");

    private static PaperOutcome Tagged(Paper paper, Slash slash, Paper original, string tag)
    {
        (Vector from, AlterationFault? fault) = PlaceFinding.Find(original, slash.From);
        (Vector to, AlterationFault? otherFault) = PlaceFinding.Find(original, slash.To);
        if ((fault ?? otherFault) is { } found)
            return found;
        if ((to - from).Norm < OnOutlineMicrometers)
            return AlterationFaults.LineWithoutLength();
        if (Marked(paper, from, "from" + tag) is { } once && Marked(once, to, "to" + tag) is { } twice)
            return twice;
        return AlterationFaults.SlashOutside();
    }

    private static Paper? Marked(Paper paper, Vector place, string tag)
    {
        int index = Enumerable.Range(0, paper.Edges.Length).MinBy(i => paper.Edges[i].DistanceMicrometers(place));
        if (paper.Edges[index].DistanceMicrometers(place) > OnOutlineMicrometers)
            return null;
        PaperEdge edge = paper.Edges[index].WithPoint(place, point => point with { Tag = point.Tag + tag });
        ImmutableArray<PaperEdge> edges = paper.Edges.SetItem(index, edge);
        if (edge.Points[^1].Tag.EndsWith(tag, StringComparison.Ordinal))
        {
            // A place at a corner belongs to the start of the edge after it.
            int next = (index + 1) % edges.Length;
            PaperPoint corner = edges[next].Points[0];
            edges = edges.SetItem(index, paper.Edges[index]);
            edges = edges.SetItem(next, edges[next] with { Points = edges[next].Points.SetItem(0, corner with { Tag = corner.Tag + tag }) });
        }
        return paper with { Edges = edges };
    }

    private static PaperOutcome One(Paper paper, string tag, double micrometers, SlashOpening opening, SideTruing truing)
    {
        Chord chord = Chord.Of(paper, "from" + tag, "to" + tag);
        if (!chord.IsInside())
            return AlterationFaults.SlashOutside();
        if (chord.CutsFold())
            return AlterationFaults.SlashThroughFold();
        if (opening == SlashOpening.Pivot && Math.Abs(micrometers) > 1.9 * chord.LengthMicrometers)
            return AlterationFaults.TooWideForPivot();
        SlashMove move = SlashMove.Of(chord, micrometers, opening);
        if (micrometers >= 0)
            return Parting.Of(paper, new ChordParting(chord, move, null), truing);
        return chord.Far(move) is { } far
            ? Parting.Of(far.Paper, new ChordParting(far, move, move.Far), truing)
            : AlterationFaults.NothingBeyond();
    }
}
