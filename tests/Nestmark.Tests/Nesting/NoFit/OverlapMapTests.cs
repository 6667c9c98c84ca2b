using Nestmark.Geometry;
using Nestmark.Nesting.NoFit;
using Nestmark.Nesting.Search;

namespace Nestmark.Tests.Nesting.NoFit;

public sealed class OverlapMapTests
{
    // Judge: the no-fit polygon itself, which its own tests check against NetTopologySuite.
    [Fact]
    public void A_place_is_severe_just_when_it_lies_in_the_no_fit_polygon() => Shapes.StarsAndPlaces.Check(60, pair =>
    {
        PairFits fits = new([pair.Still, pair.Moving]);
        (OverlapMap map, Mirroring seen) = fits.MapOf(0, 1);
        (PairFit fit, PairSide side) = (map.Fit, new PairSide(map, seen, 1));
        for (int i = 0; i + 1 < pair.Ratios.Length; i += 2)
        {
            double x = fit.MinX + pair.Ratios[i] * (fit.MaxX - fit.MinX);
            double y = fit.MinY + pair.Ratios[i + 1] * (fit.MaxY - fit.MinY);
            Assert.Equal(fit.Contains(x, y), side.At(x, y) > 0);
            if (fit.Contains(x, y))
                Assert.Equal(side.At(x, y), side.Inside(x, y));
        }
    });

    // Plain geometry: two equal squares overlap the more the nearer they lie, and alike on all sides.
    [Fact]
    public void Nearer_is_severer_and_all_sides_are_alike()
    {
        Polygon square = Polygon.Rectangle(Length.FromMillimeters(200), Length.FromMillimeters(200));
        (OverlapMap map, Mirroring seen) = new PairFits([square]).MapOf(0, 0);
        PairSide side = new(map, seen, 1);
        double[] severities = [.. new[] { 190_000, 150_000, 100_000, 50_000, 0 }.Select(x => (double)side.At(x, 0))];
        Assert.Equal(severities.Order(), severities);
        Assert.True(severities[0] > 0);
        Assert.Equal(side.At(120_000, 0), side.At(-120_000, 0), 0.03 * side.At(120_000, 0));
        Assert.Equal(side.At(120_000, 0), side.At(0, 120_000), 0.03 * side.At(120_000, 0));
    }
}
