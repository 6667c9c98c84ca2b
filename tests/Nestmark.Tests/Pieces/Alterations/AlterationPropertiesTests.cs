using CsCheck;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using static Nestmark.Tests.Pieces.Alterations.Altered;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>What must hold of alterations on any shape; NetTopologySuite judges areas and simplicity.</summary>
public sealed class AlterationPropertiesTests
{
    private static readonly Gen<(Polygon, double, double)> Cases = Gen.Select(Shapes.Star, Gen.Double[0.05, 0.95], Gen.Double[0.2, 40]);

    [Fact]
    public void Lengthening_adds_the_width_at_the_line_times_the_amount_and_shortening_takes_it_again() => Cases.Check(150, (star, share, by) =>
    {
        PieceDraft draft = Draft(star);
        AlterLine line = new LevelLine("tail", "", Length.FromMicrometers((long)(share * star.Bounds.Width)));
        AlterationResult longer = Lengthening.Apply(draft, line, Mm(by), SideTruing.AsCut);
        if (longer.Draft is null)
            return;
        double width = WidthAt(star, star.Bounds.MinX + share * star.Bounds.Width);
        Assert.Equal(star.AreaSquareMillimeters + width * by, Area(Good(longer)), 0.01 * by + 0.2);
        AlterationResult back = Shortening.Apply(longer.Draft, line, Mm(by), SideTruing.AsCut);
        SameOutline(draft, Good(back), 0.5);
    });

    [Theory]
    [InlineData(SideTruing.Smooth)]
    [InlineData(SideTruing.Straight)]
    public void An_outline_stays_simple_or_the_alteration_is_refused_and_edges_beside_keep_their_length(SideTruing truing) => Cases.Check(150, (star, share, by) =>
    {
        PieceDraft draft = Draft(star);
        AlterLine line = new LevelLine("tail", "", Length.FromMicrometers((long)(share * star.Bounds.Width)));
        foreach (AlterationResult result in (AlterationResult[])[Lengthening.Apply(draft, line, Mm(by), truing), Shortening.Apply(draft, line, Mm(by), truing)])
        {
            if (result.Draft is not { } altered)
            {
                Assert.True(result.Fault!.Largest is null || result.Fault.Largest < Mm(by));
                continue;
            }
            Good(result);
            Assert.Equal(Lettering.Of(draft).Corners.Select(corner => corner.Letter), altered.Corners.Select(corner => corner.Letter));
            double at = star.Bounds.MinX + share * star.Bounds.Width;
            foreach (((string name, Length was), (_, Length now)) in DraftMeasures.Of(draft).Edges.Zip(DraftMeasures.Of(altered).Edges))
            {
                string[] ends = name.Split('-');
                long[] x = [.. ends.Select(letter => Lettering.Of(draft).Corners.Single(corner => corner.Letter == letter).Place.X)];
                if (x.All(place => place < at - 10))
                    Assert.Equal(was.TotalMillimeters, now.TotalMillimeters, 0.003);
            }
        }
    });

    [Fact]
    public void Split_parts_always_make_up_the_whole() => Cases.Check(150, (star, share, _) =>
    {
        PieceDraft draft = Draft(star);
        AlterLine line = new LevelLine("tail", "", Length.FromMicrometers((long)(share * star.Bounds.Width)));
        PieceDraft lettered = Lettering.Of(draft);
        string low = lettered.Corners.MinBy(corner => corner.Place.X)!.Letter;
        string high = lettered.Corners.MaxBy(corner => corner.Place.X)!.Letter;
        var parts = Splitting.Apply(draft, line, low, high, Length.Zero);
        if (parts.Length == 2)
            Assert.Equal(star.AreaSquareMillimeters, Area(Good(parts[0])) + Area(Good(parts[1])), 0.1);
        else
            Assert.Null(parts[0].Draft);
    });

    [Fact]
    public void The_largest_amount_that_is_named_works_and_a_little_more_does_not() => Cases.Check(40, (star, share, _) =>
    {
        PieceDraft draft = Draft(star);
        AlterLine line = new LevelLine("tail", "", Length.FromMicrometers((long)(share * star.Bounds.Width)));
        AlterationResult result = Shortening.Apply(draft, line, Length.FromMicrometers(star.Bounds.Width), SideTruing.Smooth);
        Length? largest = Refused(result).Largest;
        if (largest is not { } amount)
            return;
        Good(Shortening.Apply(draft, line, amount, SideTruing.Smooth));
        Assert.NotNull(Shortening.Apply(draft, line, amount + Length.FromMicrometers(1), SideTruing.Smooth).Fault);
    });

    /// <summary>Every vertex of the star is a corner with a letter, so every edge is straight.</summary>
    private static PieceDraft Draft(Polygon star) => Drafts.Of(star.Outer.Select(point => new OutlineVertex(point, VertexKind.Marked)));

    private static double WidthAt(Polygon star, double x)
    {
        List<double> crossings = [];
        for (int i = 0; i < star.Outer.Length; i++)
        {
            (Point start, Point end) = (star.Outer[i], star.Outer[(i + 1) % star.Outer.Length]);
            if (start.X <= x != end.X <= x)
                crossings.Add(start.Y + (x - start.X) / (end.X - start.X) * (end.Y - start.Y));
        }
        crossings.Sort();
        return crossings.Chunk(2).Sum(pair => pair[1] - pair[0]) / 1000;
    }
}
