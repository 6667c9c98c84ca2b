using CsCheck;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Tests.Nesting.NoFit;

public sealed class PairFitsTests
{
    private static readonly Gen<(Polygon Still, Polygon Moving, double AlongRatio, double AcrossRatio)> Pairs =
        from still in Shapes.Star
        from moving in Shapes.Star
        from along in Gen.Double[0.02, 0.98]
        from across in Gen.Double[0.02, 0.98]
        select (still, moving, along, across);

    // Plain geometry: a place found from shared work lies inside as in the no-fit polygon of the two very shapes, and crossings of a line through it agree.
    [Fact]
    public void Mirror_images_share_their_work_and_give_the_same_no_fit_polygons() => Pairs.Check(40, pair =>
    {
        Polygon[] shapes = [.. Mirroring.All.Select(mirroring => mirroring.Apply(pair.Still)), .. Mirroring.All.Select(mirroring => mirroring.Apply(pair.Moving))];
        PairFits fits = new(shapes);
        for (int still = 0; still < shapes.Length; still++)
        {
            for (int moving = 0; moving < shapes.Length; moving++)
            {
                PairFit expected = new(NoFitPolygon.Of(shapes[still], shapes[moving]));
                SeenFit found = fits.Of(still, moving);
                double x = expected.MinX + pair.AlongRatio * (expected.MaxX - expected.MinX);
                double y = expected.MinY + pair.AcrossRatio * (expected.MaxY - expected.MinY);
                Assert.Equal(expected.Contains(x, y), found.Contains(x, y));
                LineCrossing[] wanted = new LineCrossing[expected.EdgeCount];
                LineCrossing[] crossed = new LineCrossing[found.Fit.EdgeCount];
                int count = expected.Cross(x, y, 0.6, 0.8, wanted);
                Assert.Equal(count, found.Cross(x, y, 0.6, 0.8, crossed));
                for (int i = 0; i < count; i++)
                    Assert.Equal(wanted[i].At, crossed[i].At, 2f);
            }
        }
    });

    // Judge: every edge by itself, in double precision. A line within 5 µm of a corner may count its two edges otherwise and is left out.
    [Fact]
    public void A_line_crosses_the_edges_that_it_crosses() => Gen.Select(Pairs, Gen.Double[0, 360]).Check(200, (pair, degrees) =>
    {
        PairFit fit = new(NoFitPolygon.Of(pair.Still, pair.Moving));
        Angle angle = Angle.FromDegrees(degrees);
        (double alongX, double alongY) = (angle.CosineRatio, angle.SineRatio);
        double x = pair.AlongRatio * (fit.MaxX - fit.MinX);
        double y = pair.AcrossRatio * (fit.MaxY - fit.MinY);
        List<double> expected = [];
        bool isClear = true;
        foreach ((double fromX, double fromY, double toX, double toY) in fit.EdgesFromCorner())
        {
            double from = alongX * (fromY - y) - alongY * (fromX - x);
            double to = alongX * (toY - y) - alongY * (toX - x);
            isClear &= Math.Abs(from) > 5 && Math.Abs(to) > 5;
            if (from > 0 != to > 0)
                expected.Add(alongX * (fromX - x) + alongY * (fromY - y) + from / (from - to) * (alongX * (toX - fromX) + alongY * (toY - fromY)));
        }
        LineCrossing[] crossings = new LineCrossing[fit.EdgeCount];
        int count = fit.Cross(x + fit.MinX, y + fit.MinY, alongX, alongY, crossings);
        if (!isClear)
            return;
        Assert.Equal(expected.Count, count);
        expected.Sort();
        for (int i = 0; i < count; i++)
            Assert.Equal(expected[i], crossings[i].At, 2 + 0.001 * Math.Abs(expected[i]));
    });

    [Fact]
    public void A_fit_stands_hardly_out_of_what_the_bounds_say() => Pairs.Check(60, pair =>
    {
        (Box still, Box moving) = (pair.Still.Bounds, pair.Moving.Bounds);
        (PairFit fit, Mirroring seen) = new PairFits([pair.Still, pair.Moving]).Of(0, 1);
        Assert.Equal(Mirroring.All[0], seen);
        Assert.InRange(still.MinX - moving.MaxX - fit.MinX, 0, PairFit.OverhangMicrometers);
        Assert.InRange(fit.MaxX - still.MaxX + moving.MinX, 0, PairFit.OverhangMicrometers);
        Assert.InRange(still.MinY - moving.MaxY - fit.MinY, 0, PairFit.OverhangMicrometers);
        Assert.InRange(fit.MaxY - still.MaxY + moving.MinY, 0, PairFit.OverhangMicrometers);
    });

    // Plain geometry: a square of 20 mm lies free in a cavity of 60 mm whose mouth of 10 mm it cannot pass, so the no-fit polygon has a hole of 40 mm.
    [Fact]
    public void A_cavity_that_cannot_be_entered_is_a_hole()
    {
        Polygon cavity = Shapes.Of("0 0, 100 0, 100 45, 80 45, 80 20, 20 20, 20 80, 80 80, 80 55, 100 55, 100 100, 0 100");
        SeenFit seen = new PairFits([cavity, Shapes.Of("0 0, 20 0, 20 20, 0 20")]).Of(0, 1);
        Assert.False(seen.Contains(40_000, 40_000));
        Assert.True(seen.Contains(10_000, 40_000));
        Assert.True(seen.Contains(80_000, 40_000));
        Assert.False(seen.Contains(110_000, 40_000));
        LineCrossing[] crossings = new LineCrossing[seen.Fit.EdgeCount];
        Assert.Equal(4, seen.Cross(-50_000, 40_000, 1, 0, crossings));
        double[] expected = [30_000, 70_000, 110_000, 150_000];
        for (int i = 0; i < 4; i++)
            Assert.Equal(expected[i], crossings[i].At, 5.0);
    }

    [Fact]
    public void Images_of_one_shape_are_one_distinct_shape() => Shapes.Star.Check(50, shape =>
    {
        DistinctShapes distinct = new([.. Mirroring.All.Select(mirroring => mirroring.Apply(shape))]);
        Assert.Equal(1, distinct.Count);
        for (int i = 0; i < Mirroring.All.Length; i++)
        {
            Polygon image = distinct.Postures[i].Mirroring.Apply(distinct.Base(distinct.Postures[i].Base));
            Assert.Equal(Mirroring.All[i].Apply(shape).Outer.Order(), image.Outer.Order());
        }
    });

    // The pose of a turn: half turns and flips of one piece lead back to the same outline.
    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(45)]
    public void A_turn_is_led_back_to_one_pose(double degrees)
    {
        Polygon hook = Shapes.Of("0 0, 80 0, 80 20, 30 20, 30 70, 0 70");
        Angle angle = Angle.FromDegrees(degrees);
        Turn[] turns = [Turn.By(angle), Turn.By(angle + Angle.Half), new(-angle, Facing.Flipped), new(-angle + Angle.Half, Facing.Flipped)];
        foreach (Turn turn in turns)
            Assert.Equal(Turn.By(angle).Apply(hook).Outer.Order(), Mirroring.Of(turn).Apply(turn.Apply(hook)).Outer.Order());
    }
}
