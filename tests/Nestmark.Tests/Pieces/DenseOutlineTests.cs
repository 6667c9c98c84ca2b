using CsCheck;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Making;

namespace Nestmark.Tests.Pieces;

/// <summary>Outlines with many points, whose allowances run into each other everywhere: right, and with bounded work.</summary>
public sealed class DenseOutlineTests
{
    private static readonly Gen<PieceDraft> Waves = Gen.Select(
        Gen.Int[40, 200], Gen.Int[2, 12], Gen.Int[2, 30], Gen.Int[5, 50], (points, count, height, width) => Drafts.Of(WaveOutline(points, count, height), width) with { PointLimitRatio = 2.5 });

    // NetTopologySuite's own buffer is the judge: mitred with the same limit, and round as the least that every allowance must hold.
    [Fact]
    public void A_wavy_piece_has_the_cutting_line_that_NetTopologySuite_makes() => Waves.Check(60, draft =>
    {
        Piece piece = draft.Made();
        Judge.AssertAround(piece.CuttingLine, piece.SeamLine);
        NetTopologySuite.Geometries.Geometry cut = Judge.ToNts(piece.CuttingLine);
        Assert.InRange(Judge.Rounded(piece.SeamLine, draft.Seam.TotalMillimeters - 0.02).Difference(cut).Area / 1e6, 0, 0.01);
        NetTopologySuite.Geometries.Geometry mitred = Judge.Mitred(piece.SeamLine, draft.Seam.TotalMillimeters + 0.01, 2.5);
        Assert.InRange(cut.Difference(mitred.Buffer(5)).Area / 1e6, 0, 0.01 * piece.CuttingLine.PerimeterMillimeters);
    });

    // A counter in place of a clock: the clean-up of a part costs the square of its points.
    [Theory]
    [InlineData(VertexKind.Curve)]
    [InlineData(VertexKind.Joint)]
    public void However_many_points_none_of_the_parts_that_are_cleaned_up_is_long(VertexKind kind)
    {
        OutlineVertex[] outline = kind == VertexKind.Curve ? WaveOutline(20_000, 40, 5) : Zigzag(20_000);
        SeamOutline seamLine = SeamOutline.Of([.. outline], [])!;
        LaidEdge[] edges = [.. seamLine.Edges.Select(edge => new LaidEdge(edge.From, edge.To, edge.Points, Length.FromMillimeters(40), AllowanceEnds.Mitred, EdgeKind.Cut))];
        AllowanceRing ring = AllowanceRing.Around([.. edges], new LayingPlan(Turn.None, [], null, 2.5), []);
        int[] lengths = [.. ring.Parts().Select(part => part.Length)];
        Assert.InRange(lengths.Max(), 4, 20);
        Assert.InRange(lengths.Sum(), 20_000, 200_000);
    }

    [Fact]
    public void Two_thousand_points_with_a_wide_allowance_give_a_short_cutting_line()
    {
        Piece piece = (Drafts.Of(WaveOutline(2_000, 60, 4), 40) with { PointLimitRatio = 2.5 }).Made();
        Assert.True(Judge.ToNts(piece.CuttingLine).IsValid);
        Assert.InRange(piece.CuttingLine.Outer.Length, 60, 2_000);
        // Between the circles that the crests and the hollows would give.
        Assert.InRange(piece.CuttingLine.AreaSquareMillimeters, Math.PI * 240 * 240, Math.PI * 244.1 * 244.1);
    }

    /// <summary>Waves round a circle of radius 200 mm; invented.</summary>
    private static OutlineVertex[] WaveOutline(int points, int count, double heightMillimeters) => [.. Enumerable.Range(0, points).Select(i =>
    {
        double radians = 2 * Math.PI * i / points;
        double radius = 200 + heightMillimeters * Angle.Sin(count * radians);
        return new OutlineVertex(Point.FromMillimeters(radius * Angle.Cos(radians), radius * Angle.Sin(radians)), VertexKind.Curve);
    })];

    /// <summary>Teeth of 3 mm round a circle, every point a corner; invented.</summary>
    private static OutlineVertex[] Zigzag(int points) => [.. Enumerable.Range(0, points).Select(i =>
    {
        double radians = 2 * Math.PI * i / points;
        return new OutlineVertex(Point.FromMillimeters((200 + i % 2 * 3) * Angle.Cos(radians), (200 + i % 2 * 3) * Angle.Sin(radians)), VertexKind.Joint);
    })];
}
