using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Seams;
using NetTopologySuite.Geometries;

namespace Nestmark.Tests.Pieces.Seams;

/// <summary>Walks of two pieces against each other; lengths judged by NetTopologySuite and by plain arithmetic.</summary>
public sealed class SeamWalkingTests
{
    [Fact]
    public void A_run_is_as_long_as_NetTopologySuite_says_and_the_edges_make_the_whole_way_round() => Shapes.Star.Check(60, star =>
    {
        Piece piece = PieceOf(Drafts.Of(Shapes.Text(star), 10));
        double around = 0;
        foreach (PieceEdge edge in piece.Edges)
        {
            EdgeRun run = EdgeRun.Find(piece, [edge.From, edge.To])!;
            LineString line = new([.. run.Points.Select(point => new Coordinate(point.X, point.Y))]);
            Assert.Equal(line.Length / 1000, run.LengthMillimeters, 6);
            Assert.Equal(edge.SeamLineLength.TotalMillimeters, run.LengthMillimeters, 0.002);
            around += run.LengthMillimeters;
        }
        Assert.Equal(Shapes.ToNts(piece.SeamLine).ExteriorRing.Length / 1000, around, 5);
    });

    [Fact]
    public void A_run_walked_backward_starts_at_its_other_end()
    {
        Piece piece = PieceOf(Drafts.Of("0 0, 100 0, 100 40, 0 40", 10));
        EdgeRun there = EdgeRun.Find(piece, ["A", "B", "C"])!;
        EdgeRun back = EdgeRun.Find(piece, ["C", "B", "A"])!;
        Assert.Equal(140, there.LengthMillimeters, 6);
        Assert.Equal(there.Points.Reverse(), back.Points);
        Assert.Equal(there.PlaceAt(30), back.PlaceAt(110));
        Assert.Equal("D-A", there.CrossingAtStart!.Name);
        Assert.Equal("C-D", there.CrossingAtEnd!.Name);
    }

    [Theory]
    [InlineData("A-C")]
    [InlineData("A-B-A")]
    [InlineData("A-X")]
    public void A_run_goes_from_neighbor_to_neighbor_one_way_round(string corners) =>
        Assert.Null(EdgeRun.Find(PieceOf(Drafts.Of("0 0, 100 0, 100 40, 0 40")), [.. corners.Split('-')]));

    [Fact]
    public void Letters_of_a_half_that_was_turned_over_are_walked_as_drawn()
    {
        // The fold lies above the drawn half, so laying it turns it over; its edges keep their names.
        PieceDraft draft = Drafts.Of("0 0, 300 0, 280 100, 0 100", 10) with { Cut = new CutQuantity(1, CutKind.OnFold), FoldEdge = "C-D" };
        Piece piece = PieceOf(draft);
        Assert.Equal(Math.Sqrt(20 * 20 + 100 * 100), EdgeRun.Find(piece, ["B", "C"])!.LengthMillimeters, 2);
        Assert.Equal(100, EdgeRun.Find(piece, ["D", "A"])!.LengthMillimeters, 2);
        Assert.Equal(300, EdgeRun.Find(piece, ["A", "B"])!.LengthMillimeters, 2);
    }

    [Theory]
    [InlineData(1.5, SeamVerdict.Meets)]
    [InlineData(1.6, SeamVerdict.Near)]
    [InlineData(3.0, SeamVerdict.Near)]
    [InlineData(3.1, SeamVerdict.Apart)]
    public void The_verdict_turns_at_half_the_tolerance_and_past_it(double difference, SeamVerdict verdict)
    {
        // references/trade.md 8: warn over 1.5 mm, error over 3 mm, after ease.
        SeamWalk walk = Walk(Rectangle("front", 400 + difference), Rectangle("back", 400), null);
        Assert.Equal(verdict, walk.Verdict);
        Assert.Equal(difference, walk.Difference.TotalMillimeters, 3);
        Assert.Equal(SeamVerdict.Meets, Walk(Rectangle("front", 400 + difference), Rectangle("back", 400), null, 10).Verdict);
    }

    [Fact]
    public void Gathers_of_two_and_a_half_to_one_take_37_and_a_half_inches_into_15()
    {
        // references/trade.md 8, [STC]: 15 in x 2.5 = 37.5 in.
        SeamWalk walk = Walk(Rectangle("skirt", 37.5 * 25.4), Rectangle("band", 15 * 25.4), new TakeUp(TakeUpKind.Gather, SeamSide.First, null, 2.5, null, null));
        Assert.Equal(SeamVerdict.Meets, walk.Verdict);
        Assert.Equal(0, walk.Difference.TotalMillimeters, 2);
        Assert.Equal(22.5 * 25.4, walk.TakenUp.TotalMillimeters, 2);
    }

    [Theory]
    [InlineData(15, 1.5)]
    [InlineData(20, 2)]
    [InlineData(30, 3)]
    public void The_ratio_of_gathers_that_fit_themselves_is_told(double inches, double ratio)
    {
        // references/trade.md 8, [INST]: samples at 1.5, 2, 3 are 15, 20, 30 in into 10 in.
        SeamWalk walk = Walk(Rectangle("sample", inches * 25.4), Rectangle("band", 254), new TakeUp(TakeUpKind.Gather, SeamSide.First, null, null, null, null));
        Assert.Equal(ratio, walk.Ratio, 6);
        Assert.Equal(SeamVerdict.Meets, walk.Verdict);
    }

    [Fact]
    public void Ease_of_a_sleeve_head_is_counted_and_never_negative()
    {
        // references/trade.md 8, [DPM]: 17.78 - 16.40 = 1.38 in.
        TakeUp ease = new(TakeUpKind.Ease, SeamSide.First, Length.FromInches(1.38), null, null, null);
        Assert.Equal(0, Walk(Rectangle("sleeve", 17.78 * 25.4), Rectangle("armhole", 16.40 * 25.4), ease).Difference.TotalMillimeters, 2);
        TakeUp fits = ease with { Amount = null };
        Assert.Equal(1.38 * 25.4, Walk(Rectangle("sleeve", 17.78 * 25.4), Rectangle("armhole", 16.40 * 25.4), fits).TakenUp.TotalMillimeters, 2);
        SeamWalk tooShort = Walk(Rectangle("sleeve", 400), Rectangle("armhole", 410), fits);
        Assert.Equal(SeamVerdict.Apart, tooShort.Verdict);
        Assert.Equal(Length.Zero, tooShort.TakenUp);
    }

    [Fact]
    public void Notches_meet_through_the_gathers_between_two_of_them()
    {
        // 100 mm plain, 200 mm gathered to 100 mm, 100 mm plain: notches at 100, 300, 350 come to lie at 100, 200, 250.
        Piece skirt = Rectangle("skirt", 400, 100, 300, 350);
        Piece band = Rectangle("band", 300, 100, 200, 254);
        TakeUp gather = new(TakeUpKind.Gather, SeamSide.First, null, 2, new ZoneEnd("", 1, Length.Zero), new ZoneEnd("", 2, Length.Zero));
        SeamWalk walk = Walk(skirt, band, gather);
        Assert.Equal(SeamVerdict.Meets, walk.Verdict);
        Assert.Equal((Length.FromMillimeters(100), Length.FromMillimeters(300)), walk.Zone);
        Assert.Equal([0.0, 0.0, 4.0], walk.Meetings.Select(meeting => Math.Round(meeting.ApartMillimeters, 3)));
    }

    [Fact]
    public void A_top_notch_meets_the_join_of_two_pieces_and_a_far_one_stays_alone()
    {
        Piece sleeve = Rectangle("sleeve", 400, 150, 220);
        ImmutableArray<SeamTerm> armhole = [Term("front"), Term("back")];
        Piece[] halves = [Rectangle("front", 220), Rectangle("back", 180, 150)];
        SideWalk second = SideWalk.Of(armhole, name => Array.Find(halves, piece => piece.Name == name))!;
        SeamWalk walk = SeamWalking.Walk(SeamOf(null, 3), SideWalk.Of([Term("sleeve")], _ => sleeve)!, second);
        Assert.Equal(SeamVerdict.Meets, walk.Verdict);
        Assert.Equal(150, Assert.Single(walk.FirstAlone).AlongMillimeters, 3);
        Assert.Equal(370, Assert.Single(walk.SecondAlone).AlongMillimeters, 3);
    }

    [Fact]
    public void Ends_tell_hems_that_differ_and_edges_that_do_not_run_on()
    {
        Piece front = PieceOf(Drafts.Of("0 0, 400 0, 400 200, 0 200", 10) with { Name = "front", Edges = [new EdgeAllowance("D", "A", Length.FromMillimeters(30), AllowanceEnds.Mitred)] });
        Piece back = PieceOf(Drafts.Of("0 0, 400 0, 460 200, 0 200", 15) with { Name = "back" });
        SideWalk first = SideWalk.Of([new SeamTerm("front.A-B", "front", ["A", "B"], 1, Length.Zero)], _ => front)!;
        SideWalk second = SideWalk.Of([new SeamTerm("back.A-B", "back", ["A", "B"], 1, Length.Zero)], _ => back)!;
        SeamWalk walk = SeamWalking.Walk(SeamOf(null, 3), first, second);
        Assert.Equal((30.0, 15.0), (walk.Ends[0].FirstHem.TotalMillimeters, walk.Ends[0].SecondHem.TotalMillimeters));
        Assert.Equal((10.0, 15.0), (walk.Ends[0].FirstSeam.TotalMillimeters, walk.Ends[0].SecondSeam.TotalMillimeters));
        Assert.Equal(0, walk.Ends[0].PointDegrees, 3);
        // The back's corner B opens by atan(60 / 200) = 16.7 degrees past the square.
        Assert.Equal(-16.699, walk.Ends[1].PointDegrees, 2);
    }

    [Fact]
    public void A_half_against_a_whole_is_recognized()
    {
        Piece half = PieceOf(Drafts.Of("0 0, 300 0, 300 100, 0 100") with { Name = "front", Cut = new CutQuantity(1, CutKind.OnFold), FoldEdge = "A-B" });
        SideWalk first = SideWalk.Of([new SeamTerm("front.B-C", "front", ["B", "C"], 1, Length.Zero)], _ => half)!;
        SideWalk second = SideWalk.Of([new SeamTerm("20 cm", "", [], 1, Length.FromCentimeters(20))], _ => null)!;
        Assert.True(SeamWalking.Walk(SeamOf(null, 3), first, second).SeemsHalved);
        Assert.Equal("front.B-C (half)", first.Text);
    }

    [Fact]
    public void A_piece_with_a_zone_keeps_its_rules()
    {
        Piece skirt = Rectangle("skirt", 400) with
        {
            Direction = DirectionRule.EitherWay,
            Stretch = StretchRule.AlongGrain,
            Flaws = FlawTolerance.Anywhere,
            PiecedAllowance = Length.FromMillimeters(10),
        };
        Piece marked = ZoneMarking.Marked(EdgeRun.Find(skirt, ["A", "B"])!, 100, 300, "gather to 10 cm");
        Assert.Equal(
            (DirectionRule.EitherWay, StretchRule.AlongGrain, FlawTolerance.Anywhere, skirt.PiecedAllowance),
            (marked.Direction, marked.Stretch, marked.Flaws, marked.PiecedAllowance));
    }

    [Fact]
    public void A_zone_puts_notches_and_a_line_on_the_piece()
    {
        Piece skirt = Rectangle("skirt", 400);
        EdgeRun run = EdgeRun.Find(skirt, ["A", "B"])!;
        Piece marked = ZoneMarking.Marked(run, 100, 300, "gather to 10 cm");
        Assert.Equal([100.0, 300.0], EdgeRun.Find(marked, ["A", "B"])!.Notches.Select(notch => Math.Round(notch.AlongMillimeters, 3)));
        PieceLine line = Assert.Single(marked.Lines);
        Assert.Equal("gather to 10 cm", line.Label);
        Assert.All(line.Points, point => Assert.Equal(6, Judge.DistanceToOutline(marked.SeamLine, point.X, point.Y) / 1000, 2));
        Assert.All(line.Points, point => Assert.True(Judge.Holds(Judge.ToNts(marked.SeamLine), point.X, point.Y, 0)));
        Assert.Equal(skirt.CuttingLine, marked.CuttingLine);
        Assert.Equal(10, marked.Notches[0].OnCuttingLine.DistanceTo(marked.Notches[0].OnSeamLine).TotalMillimeters, 2);
    }

    private static Piece PieceOf(PieceDraft draft) => PieceMaking.Make(draft).Piece!;

    /// <summary>A rectangle whose edge A-B has a length, with notches along it.</summary>
    private static Piece Rectangle(string name, double along, params double[] notches) => PieceOf(Drafts.Of(FormattableString.Invariant($"0 0, {along} 0, {along} 100, 0 100"), 10) with
    {
        Name = name,
        Notches = [.. notches.Select(notch => new PieceMark("", Nestmark.Geometry.Point.FromMillimeters(notch, 0)))],
    });

    private static SeamTerm Term(string piece) => new(piece + ".A-B", piece, ["A", "B"], 1, Length.Zero);

    private static SeamWalk Walk(Piece first, Piece second, TakeUp? takeUp, double tolerance = 3) =>
        SeamWalking.Walk(SeamOf(takeUp, tolerance), SideWalk.Of([Term(first.Name)], _ => first)!, SideWalk.Of([Term(second.Name)], _ => second)!);

    private static Seam SeamOf(TakeUp? takeUp, double tolerance) => new()
    {
        Name = "test",
        First = [],
        Second = [],
        TakeUp = takeUp,
        Tolerance = Length.FromMillimeters(tolerance),
        Corners = CornerRule.RunOn,
        Marks = ZoneMarks.Drawn,
    };
}
