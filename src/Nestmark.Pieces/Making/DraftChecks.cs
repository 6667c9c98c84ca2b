using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>What can be said about a draft before its outline is put in order.</summary>
internal static class DraftChecks
{
    private const long FarthestMicrometers = 100_000_000;
    private static readonly Length WidestAllowance = Length.FromCentimeters(50);

    /// <summary>Numbers that cannot be: places too far away, counts, widths, the limit.</summary>
    public static IEnumerable<PieceFault> Of(PieceDraft draft)
    {
        if (draft.Outline.Length > PieceMaking.MostPoints)
            yield return PieceFaults.TooManyPoints(draft.Outline.Length, PieceMaking.MostPoints);
        if (draft.Outline.Any(vertex => IsFar(vertex.Point)))
            yield return PieceFaults.TooLarge(PieceSubject.Outline);
        if (draft.Cut.Count < 1)
            yield return PieceFaults.CountBelowOne(draft.Cut.Count);
        if (IsOutOfRange(draft.Seam))
            yield return PieceFaults.WidthOutOfRange(PieceSubject.Seam, "");
        if (!(draft.PointLimitRatio is >= 1 and <= 100))
            yield return PieceFaults.LimitOutOfRange();
        foreach (EdgeAllowance edge in draft.Edges.Where(edge => IsOutOfRange(edge.Width)))
            yield return PieceFaults.WidthOutOfRange(PieceSubject.Edges, edge.From + "-" + edge.To);
        if (IsFar(draft.FoldLine))
            yield return PieceFaults.TooLarge(PieceSubject.Fold);
        if (IsFar(draft.Grainline))
            yield return PieceFaults.TooLarge(PieceSubject.Grain);
        if (MarkedPlaces(draft).Any(IsFar))
            yield return PieceFaults.TooLarge(PieceSubject.Marks);
    }

    private static IEnumerable<Point> MarkedPlaces(PieceDraft draft) =>
        [.. draft.Notches.Select(notch => notch.Place), .. draft.Marks.Select(mark => mark.Place), .. draft.Lines.SelectMany(line => line.Points)];

    private static bool IsOutOfRange(Length width) => width < Length.Zero || width > WidestAllowance;

    private static bool IsFar(Segment? segment) => segment is not null && (IsFar(segment.Start) || IsFar(segment.End));

    private static bool IsFar(Point point) =>
        point.X is < -FarthestMicrometers or > FarthestMicrometers || point.Y is < -FarthestMicrometers or > FarthestMicrometers;
}
