using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>Results of alterations, judged with NetTopologySuite and plain geometry.</summary>
internal static class Altered
{
    /// <summary>Corner letters with their places, and the drawn piece's area is that of NetTopologySuite.</summary>
    public static string Corners(this PieceDraft draft) => string.Join(", ", draft.Corners.Select(corner =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{corner.Letter} {corner.Place.XMillimeters:0.###} {corner.Place.YMillimeters:0.###}")));

    public static PieceDraft Good(AlterationResult result)
    {
        Assert.True(result.Fault is null, result.Fault?.What);
        Assert.True(Judge.ToNts(Shape(result.Draft!)).IsValid);
        return result.Draft!;
    }

    public static AlterationFault Refused(AlterationResult result)
    {
        Assert.Null(result.Draft);
        return result.Fault!;
    }

    public static Polygon Shape(PieceDraft draft) => Polygon.Of(draft.Outline.Select(vertex => vertex.Point));

    public static double Area(PieceDraft draft) => Judge.ToNts(Shape(draft)).Area / 1e6;

    /// <summary>Length of an edge in millimeters.</summary>
    public static double Edge(PieceDraft draft, string name) =>
        DraftMeasures.Of(draft).Edges.Single(edge => edge.Name == name).Length.TotalMillimeters;

    public static void SameOutline(PieceDraft expected, PieceDraft actual, double slackSquareMillimeters = 1) =>
        Assert.InRange(Judge.DifferenceSquareMillimeters(Judge.ToNts(Shape(expected)), Judge.ToNts(Shape(actual))), 0, slackSquareMillimeters);

    public static Length Mm(double millimeters) => Length.FromMillimeters(millimeters);
}
