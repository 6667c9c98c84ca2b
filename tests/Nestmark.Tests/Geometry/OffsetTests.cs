using Nestmark.Geometry;
using Nestmark.Tests.Pieces;

namespace Nestmark.Tests.Geometry;

public sealed class OffsetTests
{
    [Fact]
    public void Grown_holds_every_point_within_the_distance_and_little_more() => Stars.Uniform.Check(100, draft =>
    {
        Polygon polygon = draft.Made().SeamLine;
        Polygon grown = Offset.Grow(polygon, Length.FromMillimeters(5));
        // NetTopologySuite's round buffer, its chords 0.4 micrometers inside the true round, is the judge; a spike's corner reaches 1.45 distances.
        Assert.InRange(Judge.Rounded(polygon, 5).Difference(Judge.ToNts(grown)).Area, 0, 0);
        Assert.InRange(Judge.ToNts(grown).Difference(Judge.Rounded(polygon, 7.256)).Area, 0, 0);
        Assert.True(Clipping.IsSimple(grown));
    });

    [Fact]
    public void Grown_by_zero_is_the_same()
    {
        Polygon square = Polygon.Rectangle(Length.FromMillimeters(40), Length.FromMillimeters(30));
        Assert.Same(square, Offset.Grow(square, Length.Zero));
    }

    [Fact]
    public void Holes_shrink_and_close()
    {
        Polygon frame = Polygon.WithHoles(Drafts.Places("0 0, 90 0, 90 90, 0 90"), [Drafts.Places("40 40, 40 50, 50 50, 50 40")]);
        Assert.Equal(36, Clipping.TotalSquareMillimeters([Polygon.Of(Offset.Grow(frame, Length.FromMillimeters(2)).Holes[0])]), 0.05);
        Assert.Empty(Offset.Grow(frame, Length.FromMillimeters(6)).Holes);
    }

    [Fact]
    public void Grow_rejects_a_distance_below_zero() =>
        Assert.Throws<ArgumentException>(() => Offset.Grow(Polygon.Rectangle(Length.FromMillimeters(4), Length.FromMillimeters(3)), Length.FromMicrometers(-1)));
}
