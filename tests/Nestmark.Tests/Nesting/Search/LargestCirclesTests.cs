using Nestmark.Geometry;
using Nestmark.Nesting.NoFit;
using Nestmark.Nesting.Search;

namespace Nestmark.Tests.Nesting.Search;

public sealed class LargestCirclesTests
{
    // Plain geometry: circles inside two shapes overlap only where the shapes do. Nine tenths: a severity is mixed from four nodes, so it may be a little below that of its own place.
    [Fact]
    public void They_seldom_make_a_place_worse_than_it_is() => Shapes.StarsAndPlaces.Check(60, pair =>
    {
        SearchShape[] shapes = [new(pair.Still, 60_000), new(pair.Moving, 40_000)];
        PairFits fits = new([pair.Still, pair.Moving]);
        (PairSides sides, LargestCircles circles) = (new PairSides(shapes, fits), new LargestCircles(shapes, fits));
        SeenFit fit = sides.FitOf(0, 1);
        int inside = 0;
        int worse = 0;
        for (int i = 0; i + 1 < pair.Ratios.Length; i += 2)
        {
            double x = fit.Seen.SignX * (fit.Fit.MinX + pair.Ratios[i] * (fit.Fit.MaxX - fit.Fit.MinX));
            double y = fit.Seen.SignY * (fit.Fit.MinY + pair.Ratios[i + 1] * (fit.Fit.MaxY - fit.Fit.MinY));
            float least = circles.LeastSeverity(0, 1, (float)x, (float)y);
            float severity = sides.Of(0, 1).At(x, y);
            if (severity == 0)
                Assert.InRange(least, 0, 0.02f * sides.Of(0, 1).At(0, 0));
            inside += severity > 0 ? 1 : 0;
            worse += 0.9f * least > severity && severity > 0 ? 1 : 0;
        }
        Assert.InRange(worse, 0, 0.05 * inside + 1);
    });

    // By hand: squares of 40 mm hold circles of 20 mm; moved by 10 mm these overlap by 30 mm, so the root of 2 · 30 · 20 mm² is the least, √1200 mm.
    [Fact]
    public void Two_squares_overlap_as_their_circles_do()
    {
        Polygon square = Polygon.Rectangle(Length.FromMillimeters(40), Length.FromMillimeters(40));
        SearchShape[] shapes = [new(square, 40_000)];
        LargestCircles circles = new(shapes, new PairFits([square]));
        Assert.InRange(circles.LeastSeverity(0, 0, 10_000, 0), 34_600, 1.6 * 34_641);
        Assert.Equal(0, circles.LeastSeverity(0, 0, 41_000, 0));
    }
}
