using System.Collections.Immutable;
using Nestmark.Pieces.Alterations.Papers;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Takes some corners from another size, as the hip of one size and the waist of another; the edges between lead smoothly from one to the other.</summary>
public static class Blending
{
    /// <summary>The piece between two sizes.</summary>
    /// <param name="draft">The size to begin from; it can be made into a piece.</param>
    /// <param name="other">The other size; the same corners.</param>
    /// <param name="corners">The corners taken from the other size; each is one of theirs.</param>
    /// <param name="on">The corner at which the two sizes lie on each other.</param>
    /// <returns>An edge between two corners of one size is that size's; others change over with the steps 3t² - 2t³, which join without a bend at both corners.</returns>
    public static AlterationResult Apply(PieceDraft draft, PieceDraft other, ImmutableArray<string> corners, string on) => Trying.Once(draft, paper =>
    {
        Paper second = PaperReading.Of(other);
        if (!paper.Edges.Select(edge => edge.Name).SequenceEqual(second.Edges.Select(edge => edge.Name)))
            return AlterationFaults.OtherCorners(other.Size, second.Letters);
        if (corners.Append(on).FirstOrDefault(letter => paper.Corner(letter) is null) is string missing)
            return AlterationFaults.NoSuchCorner(missing, paper.Letters);
        Paper laid = Laid(second, paper, on);
        return paper with { Edges = Paper.Closed([.. paper.Edges.Select((edge, i) => Blended(edge, laid.Edges[i], corners))]) };
    });

    /// <summary>The other size turned to the same grain and moved so that one corner lies on its partner.</summary>
    private static Paper Laid(Paper second, Paper paper, string on)
    {
        Vector from = second.Corner(on)!.Value;
        Vector to = paper.Corner(on)!.Value;
        return second.Mapped(place => to + (place - from).Dot(second.Along) * paper.Along + (place - from).Dot(second.Across) * paper.Across);
    }

    private static PaperEdge Blended(PaperEdge edge, PaperEdge other, ImmutableArray<string> corners)
    {
        bool startsOther = corners.Contains(edge.From);
        bool endsOther = corners.Contains(edge.To);
        if (startsOther == endsOther)
            return startsOther ? edge with { Points = other.Points } : edge;
        ImmutableArray<double> shares = edge.Shares;
        double whole = edge.LengthMicrometers;
        double otherWhole = other.LengthMicrometers;
        PaperPoint Between(double share, PaperPoint point)
        {
            double step = share * share * (3 - 2 * share);
            double weight = startsOther ? 1 - step : step;
            return point with { Place = (1 - weight) * edge.PlaceAt(share * whole) + weight * other.PlaceAt(share * otherWhole) };
        }
        const int Steps = 48;
        IEnumerable<(double Share, PaperPoint Point)> points =
        [
            .. edge.Points.Select((point, i) => (shares[i], point)),
            .. other.Shares.Skip(1).SkipLast(1).Select(share => (share, PaperPoint.AddedAt(default))),
            .. Enumerable.Range(1, Steps - 1).Select(i => ((double)i / Steps, PaperPoint.AddedAt(default))),
        ];
        return edge with { Points = [.. points.OrderBy(pair => pair.Share).Select(pair => Between(pair.Share, pair.Point))] };
    }
}
