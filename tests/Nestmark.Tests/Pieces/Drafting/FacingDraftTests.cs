using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;
using Nestmark.Pieces.Seams;
using NetTopologySuite.Geometries;
using NetTopologySuite.Operation.Buffer;

namespace Nestmark.Tests.Pieces.Drafting;

/// <summary>Facings against NetTopologySuite's own buffer, pocket bags against arithmetic.</summary>
public sealed class FacingDraftTests
{
    [Fact]
    public void A_facing_is_what_lies_within_its_width_of_the_edge()
    {
        Piece front = Front();
        EdgeRun neck = EdgeRun.Find(front, ["B", "C"])!;
        Piece facing = CircleSkirtTests.Made(FacingDraft.Draft(neck, Length.FromMillimeters(60), null, length => length.ToString()).Shape!);
        var line = new GeometryFactory().CreateLineString([.. neck.Points.Select(point => new Coordinate(point.X, point.Y))]);
        var band = BufferOp.Buffer(line, 60_000, new BufferParameters(64));
        var expected = Judge.ToNts(front.SeamLine).Intersection(band);
        Assert.Equal(expected.Area / 1e6, Judge.ToNts(facing.SeamLine).Area / 1e6, 20.0);
        Assert.NotNull(facing.FoldEdge);
        Assert.Equal(front.Cut, facing.Cut);
        // Where its inner line turns from straight to round there is no step: A on the fold, B and C at the neck, D on the piece's edge, and the arc's end on the fold.
        Assert.All(facing.Edges, edge => Assert.True(edge.SeamLineLength > Length.FromMillimeters(1), $"{edge.Name} {edge.SeamLineLength}"));
    }

    [Fact]
    public void The_edge_that_it_shares_is_as_long_and_keeps_its_allowance()
    {
        Piece front = Front();
        EdgeRun neck = EdgeRun.Find(front, ["B", "C"])!;
        Piece facing = CircleSkirtTests.Made(FacingDraft.Draft(neck, Length.FromMillimeters(60), null, length => length.ToString()).Shape!, 10);
        Assert.Contains(facing.Edges, edge => Math.Abs(edge.SeamLineLength.TotalMillimeters - neck.LengthMillimeters) < 0.01 && edge.Allowance == Length.FromMillimeters(6));
    }

    [Fact]
    public void A_pocket_bag_has_its_opening_between_two_notches()
    {
        PocketMeasures measures = new(Cm(16), Cm(15), Cm(26), Cm(4), null);
        DraftedShape shape = PocketBag.Draft(measures, length => length.ToString()).Shape!;
        Assert.Equal(new CutQuantity(2, CutKind.Pairs), shape.Cut);
        Piece bag = CircleSkirtTests.Made(shape);
        EdgeRun straight = EdgeRun.Find(bag, ["A", "B"])!;
        Assert.Equal([60.0, 220.0], straight.Notches.Select(notch => Math.Round(notch.AlongMillimeters, 3)));
        // 26 x 15 less the corner outside a quarter circle of 7.5 cm.
        Assert.Equal(26 * 15 - 7.5 * 7.5 * (1 - Math.PI / 4), Judge.ToNts(bag.SeamLine).Area / 1e8, 0.1);
        Assert.Null(PocketBag.Draft(measures with { Depth = Cm(19) }, length => length.ToString()).Shape);
    }

    private static Piece Front() => PieceMaking.Make(Drafts.Of("0 0, 480 0, 560 90, 530 210, 360 280, 0 270", 10) with
    {
        Cut = new CutQuantity(1, CutKind.OnFold),
        FoldEdge = "A-B",
        Edges = [new EdgeAllowance("B", "C", Length.FromMillimeters(6), AllowanceEnds.Mitred)],
    }).Piece!;

    private static Length Cm(double centimeters) => Length.FromCentimeters(centimeters);
}
