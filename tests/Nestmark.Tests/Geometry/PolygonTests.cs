using Nestmark.Geometry;
using Nestmark.Tests.Pieces;

namespace Nestmark.Tests.Geometry;

public sealed class PolygonTests
{
    [Theory]
    [InlineData("0 0, 40 0, 40 30", 600)]
    [InlineData("0 0, 40 30, 40 0", 600)]
    [InlineData("0 0, 0 0, 40 0, 40 30, 40 30, 0 30, 0 0", 1200)]
    public void Area_is_exact_whichever_way_round(string ring, double expected) =>
        Assert.Equal(expected, Polygon.Of(Drafts.Places(ring)).AreaSquareMillimeters);

    [Theory]
    [InlineData("0 0, 40 30, 40 0", "40 0, 40 30, 0 0")]
    [InlineData("0 0, 40 0, 40 30, 40 30", "0 0, 40 0, 40 30")]
    public void Rings_run_counter_clockwise_without_repeated_neighbors(string ring, string expected) =>
        Assert.Equal(expected, Drafts.Text(Polygon.Of(Drafts.Places(ring)).Outer));

    [Theory]
    [InlineData("0 0, 40 0")]
    [InlineData("0 0, 40 0, 80 0")]
    [InlineData("0 0, 40 0, 0 0")]
    public void A_ring_without_area_is_rejected(string ring) => Assert.Throws<ArgumentException>(() => Polygon.Of(Drafts.Places(ring)));

    [Fact]
    public void Holes_run_clockwise_and_are_left_out_of_the_area()
    {
        Polygon frame = Polygon.WithHoles(Drafts.Places("0 0, 40 0, 40 30, 0 30"), [Drafts.Places("10 10, 20 10, 20 20, 10 20")]);
        Assert.Equal(1100, frame.AreaSquareMillimeters);
        Assert.True(Polygon.TwiceSignedArea(frame.Holes[0].AsSpan()) < 0);
    }

    // 3-4-5 triangle.
    [Fact]
    public void Perimeter_is_the_length_of_the_outer_ring() =>
        Assert.Equal(120, Polygon.Of(Drafts.Places("0 0, 40 0, 40 30")).PerimeterMillimeters, 1e-9);

    [Fact]
    public void A_kilometer_square_has_its_area_exactly() =>
        Assert.Equal(2 * (Int128)1_000_000_000 * 1_000_000_000, Polygon.Of([new(0, 0), new(1_000_000_000, 0), new(1_000_000_000, 1_000_000_000), new(0, 1_000_000_000)]).TwiceArea);
}
