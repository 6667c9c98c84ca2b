using Nestmark.Geometry;
using Nestmark.Tests.Pieces;

namespace Nestmark.Tests.Geometry;

public sealed class TurnTests
{
    [Theory]
    [InlineData(0, Facing.Plain, "3 1")]
    [InlineData(90, Facing.Plain, "-1 3")]
    [InlineData(180, Facing.Plain, "-3 -1")]
    [InlineData(270, Facing.Plain, "1 -3")]
    [InlineData(0, Facing.Flipped, "3 -1")]
    [InlineData(90, Facing.Flipped, "1 3")]
    public void Quarter_turns_and_flips_are_exact_swaps(double degrees, Facing facing, string expected) =>
        Assert.Equal(expected, Drafts.Text([new Turn(Angle.FromDegrees(degrees), facing).Apply(Point.FromMillimeters(3, 1))]));

    [Fact]
    public void Quarter_turns_and_flips_keep_the_area_exactly_and_the_ring_counter_clockwise() => Stars.Uniform.Check(30, draft =>
    {
        Polygon polygon = draft.Made().SeamLine;
        foreach (Facing facing in Enum.GetValues<Facing>())
        {
            for (int quarter = 0; quarter < 4; quarter++)
                Assert.Equal(polygon.TwiceArea, new Turn(Angle.FromDegrees(90 * quarter), facing).Apply(polygon).TwiceArea);
        }
    });

    // A 3-4-5 triangle: turned by acos(3/5) the point (5, 0) goes to (3, 4).
    [Fact]
    public void Any_angle_turns_counter_clockwise() =>
        Assert.Equal("3 4", Drafts.Text([Turn.By(Angle.OfDirection(3, 4)).Apply(Point.FromMillimeters(5, 0))]));
}
