using System.Collections.Immutable;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using static Nestmark.Tests.Pieces.Alterations.Altered;

namespace Nestmark.Tests.Pieces.Alterations;

/// <summary>Grade tables and blends. References/trade.md 8: a quarter of the girth's step a quarter piece; allowances are not graded.</summary>
public sealed class SizeTests
{
    private static readonly PieceDraft Base = Drafts.Of("0 0, 600 0, 600 170, 0 280", 15).OnFold("A-B").WithNotch("side", "300 225") with
    {
        Lines = [new PieceLine("hip", Drafts.Places("300 20, 300 200"))],
        Marks = [new PieceMark("tie", Drafts.Places("300 100")[0])],
    };

    [Fact]
    public void A_size_moves_its_corners_and_all_else_follows()
    {
        PieceDraft larger = Good(Grading.Apply(Base, Table(GradeBetween.Given), "L"));
        Assert.Equal("A 0 0, B 610 0, C 610 180, D 0 290", larger.Corners());
        Assert.Equal("L", larger.Size);
        // Halfway along the side.
        Assert.Equal(("side", 305.0, 235.0), (larger.Notches[0].Label, larger.Notches[0].Place.XMillimeters, larger.Notches[0].Place.YMillimeters));
        Assert.InRange(larger.Marks[0].Place.XMillimeters, 303, 307);
        Assert.Equal(15, larger.Made().Edges.Single(edge => edge.Name == "C-D").Allowance.TotalMillimeters);
        SameOutline(Base, Good(Grading.Apply(Base, Table(GradeBetween.Given), "M")), 0.01);
    }

    [Fact]
    public void A_stretch_of_all_corners_carries_the_inside_exactly()
    {
        GradeTable table = new(["M", "L"], "M", [("B", Offsets(("L", 60, 0))), ("C", Offsets(("L", 60, 0)))], GradeBetween.Given);
        PieceDraft longer = Good(Grading.Apply(Base, table, "L"));
        // Along the grain everything is a tenth longer: an affine change, which mean value coordinates reproduce.
        Assert.Equal(330, longer.Marks[0].Place.XMillimeters, 0.01);
        Assert.Equal(100, longer.Marks[0].Place.YMillimeters, 0.01);
        Assert.All(longer.Lines[0].Points, point => Assert.Equal(330, point.XMillimeters, 0.01));
    }

    [Fact]
    public void Sizes_between_have_even_steps_if_asked_and_none_otherwise()
    {
        // M, L, XL: L has no offset of its own for D, XL has 20; halfway is 10.
        GradeTable even = Table(GradeBetween.Even) with { Sizes = ["S", "M", "L", "XL"], Corners = [("D", Offsets(("XL", 0, 20), ("S", 0, -7)))] };
        Assert.Equal("A 0 0, B 600 0, C 600 170, D 0 290", Good(Grading.Apply(Base, even, "L")).Corners());
        Assert.Equal("A 0 0, B 600 0, C 600 170, D 0 273", Good(Grading.Apply(Base, even, "S")).Corners());
        Assert.StartsWith("The size L has no offsets", Refused(Grading.Apply(Base, even with { Between = GradeBetween.Given }, "L")).What, StringComparison.Ordinal);
        Assert.StartsWith("The size S has no offsets", Refused(Grading.Apply(Base, even with { Corners = [("D", Offsets(("XL", 0, 20)))] }, "S")).What, StringComparison.Ordinal);
    }

    [Fact]
    public void The_hip_of_one_size_and_the_waist_of_another_join_without_a_bend()
    {
        PieceDraft medium = Drafts.Of("0 0, 600 0, 600 170, 0 280").OnFold("A-B") with { Size = "M" };
        PieceDraft large = Drafts.Of("1000 1000, 1600 1000, 1600 1200, 1000 1310").OnFold("A-B") with { Size = "L" };
        PieceDraft blend = Good(Blending.Apply(medium, large, ["A", "D"], "A"));
        Assert.Equal("A 0 0, B 600 0, C 600 170, D 0 310", blend.Corners());
        // Both sides are straight and 30 apart; between, the share is 3t² - 2t³: half in the middle, and no turn at either end.
        Assert.Equal(0.5 * (225 + 255), AcrossAt(blend, 300), 0.3);
        Assert.Equal(Slope(medium, 595), Slope(blend, 595), 0.01);
        Assert.Equal(Slope(large with { Outline = [.. large.Outline.Select(v => v with { Point = v.Point - Drafts.Places("1000 1000")[0] })] }, 5), Slope(blend, 5), 0.01);
        SameOutline(medium, Good(Blending.Apply(medium, large, [], "A")), 0.1);
    }

    [Fact]
    public void Only_outlines_with_the_same_corners_are_blended() => Assert.StartsWith(
        "The outline of size L has the corners A, B, C,", Refused(Blending.Apply(Base, Drafts.Of("0 0, 500 0, 0 200").OnFold("A-B") with { Size = "L" }, ["A"], "A")).What, StringComparison.Ordinal);

    private static GradeTable Table(GradeBetween between) => new(
        ["S", "M", "L"], "M",
        [("B", Offsets(("L", 10, 0), ("S", -10, 0))), ("C", Offsets(("L", 10, 10), ("S", -10, -10))), ("D", Offsets(("L", 0, 10), ("S", 0, -10)))], between);

    private static ImmutableDictionary<string, CornerOffset> Offsets(params (string Size, double Along, double Across)[] offsets) =>
        offsets.ToImmutableDictionary(offset => offset.Size, offset => new CornerOffset(Mm(offset.Along), Mm(offset.Across)));

    private static double Slope(PieceDraft draft, double x) => (AcrossAt(draft, x + 4) - AcrossAt(draft, x - 4)) / 8;

    /// <summary>How far from the fold the side lies at a place along it.</summary>
    private static double AcrossAt(PieceDraft draft, double x)
    {
        var ring = draft.Outline.Select(vertex => (X: vertex.Point.XMillimeters, Y: vertex.Point.YMillimeters)).ToList();
        double highest = 0;
        for (int i = 0; i < ring.Count; i++)
        {
            (var start, var end) = (ring[i], ring[(i + 1) % ring.Count]);
            if (start.X <= x != end.X <= x)
                highest = Math.Max(highest, start.Y + (x - start.X) / (end.X - start.X) * (end.Y - start.Y));
        }
        return highest;
    }
}
