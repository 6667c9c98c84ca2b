using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

public sealed partial class AllowanceTests
{
    // references/trade.md 3.3, plain mitre, a = b = 1.5 cm and the rows with unequal widths.
    [Theory]
    [InlineData(150, 1.5, 1.5, 1.5529)]
    [InlineData(120, 1.5, 1.5, 1.7321)]
    [InlineData(90, 1.5, 1.5, 2.1213)]
    [InlineData(60, 1.5, 1.5, 3.0000)]
    [InlineData(45, 1.5, 1.5, 3.9197)]
    [InlineData(30, 1.5, 1.5, 5.7956)]
    [InlineData(20, 1.5, 1.5, 8.6382)]
    [InlineData(90, 1.5, 4.0, 4.2720)]
    [InlineData(90, 4.0, 1.5, 4.2720)]
    [InlineData(60, 1.5, 3.0, 4.5826)]
    [InlineData(60, 3.0, 1.5, 4.5826)]
    public void A_mitred_tip_stands_as_far_from_the_corner_as_the_table_says(
        double interiorDegrees, double arrivingCentimeters, double leavingCentimeters, double expectedCentimeters)
    {
        Piece piece = Wedge(interiorDegrees).WithEdge("C-A", 10 * arrivingCentimeters).WithEdge("A-B", 10 * leavingCentimeters).Made();
        Assert.InRange(TipDistanceMicrometers(piece), 10_000 * expectedCentimeters - 1.5, 10_000 * expectedCentimeters + 1.5);
    }

    // references/trade.md 3.3: a = b = 5/8 in, 90 degrees: 0.8839 in.
    [Fact]
    public void A_mitred_tip_of_five_eighths_of_an_inch_is_0_8839_in()
    {
        Piece piece = Wedge(90, Length.FromInches(0.625).TotalMillimeters).Made();
        Assert.InRange(TipDistanceMicrometers(piece) / 25_400, 0.8838, 0.8840);
    }

    // references/trade.md 3.3: a limit of k allowances cuts corners sharper than 2 asin(1/k).
    [Theory]
    [InlineData(2, 60)]
    [InlineData(3, 38.94)]
    [InlineData(4, 28.96)]
    [InlineData(5, 23.07)]
    public void The_point_limit_cuts_corners_sharper_than_the_table_says(double limitRatio, double degrees)
    {
        Assert.Equal(1, PointsBelowTheCorner(degrees + 0.02, limitRatio));
        Assert.Equal(2, PointsBelowTheCorner(degrees - 0.02, limitRatio));
    }

    [Fact]
    public void A_sharp_point_is_cut_square_to_the_bisector_at_the_limit()
    {
        Piece piece = (Wedge(30, 15) with { PointLimitRatio = 2.5 }).Made();
        Point corner = piece.Corners[0].Place;
        Point[] ends = [.. piece.CuttingLine.Outer.Where(point => point.Y < corner.Y)];
        Assert.Equal([-37_500, -37_500], ends.Select(end => end.Y - corner.Y));
        Assert.InRange(ends.Sum(end => end.X - corner.X), -1, 1);
    }

    [Fact]
    public void A_rectangle_grows_by_its_allowances()
    {
        Piece piece = Drafts.Of("0 0, 160 0, 160 180, 0 180", 10).WithEdge("C-D", 40).Made();
        Assert.Equal("0 0, 180 0, 180 230, 0 230", Drafts.Text(piece.CuttingLine.Outer));
        Assert.Equal("10 10, 170 10, 170 190, 10 190", Drafts.Text(piece.SeamLine.Outer));
    }

    [Fact]
    public void Where_a_straight_edge_changes_its_width_the_cutting_line_steps_square()
    {
        Piece piece = Drafts.Of(
        [
            new(Point.FromMillimeters(0, 0), VertexKind.Joint), new(Point.FromMillimeters(100, 0), VertexKind.Marked),
            new(Point.FromMillimeters(200, 0), VertexKind.Joint), new(Point.FromMillimeters(200, 80), VertexKind.Joint), new(Point.FromMillimeters(0, 80), VertexKind.Joint),
        ]).WithEdge("A-B", 12.7).WithEdge("B-C", 19.05).Made();
        Assert.Equal("0 6.35, 100 6.35, 100 0, 200 0, 200 99.05, 0 99.05", Drafts.Text(piece.CuttingLine.Outer));
    }

    [Fact]
    public void An_inner_corner_meets_inside()
    {
        Piece piece = Drafts.Of("0 0, 100 0, 100 40, 50 40, 50 100, 0 100", 10).Made();
        Assert.Equal("0 0, 120 0, 120 60, 70 60, 70 120, 0 120", Drafts.Text(piece.CuttingLine.Outer));
    }

    [Fact]
    public void An_inner_corner_of_unequal_widths_meets_inside()
    {
        Piece piece = Drafts.Of("0 0, 100 0, 100 40, 50 40, 50 100, 0 100").WithEdge("C-D", 5).WithEdge("D-E", 20).Made();
        Assert.Equal("0 0, 100 0, 100 45, 70 45, 70 100, 0 100", Drafts.Text(piece.CuttingLine.Outer));
    }

    [Fact]
    public void Zero_beside_a_width_runs_straight_on()
    {
        Piece piece = Drafts.Of("0 0, 100 0, 100 80, 0 80").WithEdge("B-C", 15).Made();
        Assert.Equal(Length.FromMillimeters(115).Micrometers, piece.CuttingLine.Bounds.Width);
        Assert.Equal(Length.FromMillimeters(80).Micrometers, piece.CuttingLine.Bounds.Height);
    }

    [Fact]
    public void A_narrow_slit_closes_with_a_note()
    {
        string notes = Drafts.Of("0 0, 200 0, 200 100, 103 100, 103 60, 130 60, 130 30, 70 30, 70 60, 97 60, 97 100, 0 100", 5).Notes();
        Assert.Contains("meet across a narrow opening", notes, StringComparison.Ordinal);
    }

    // Chambers of 6.9 x 6.9 behind slits of 1 leave 0.9 x 0.9 each under an allowance of 3: specks, however many.
    [Fact]
    public void Specks_that_allowances_leave_open_need_no_note()
    {
        const string chamber = "{0} 100, {0} 80, {1} 80, {1} 73.1, {2} 73.1, {2} 80, {3} 80, {3} 100";
        string first = string.Format(CultureInfo.InvariantCulture, chamber, 150.5, 153.45, 146.55, 149.5);
        string second = string.Format(CultureInfo.InvariantCulture, chamber, 50.5, 53.45, 46.55, 49.5);
        Assert.Empty(Drafts.Of($"0 0, 200 0, 200 100, {first}, {second}, 0 100", 3).Notes());
    }

    /// <summary>A triangle whose corner A points straight down.</summary>
    private static PieceDraft Wedge(double interiorDegrees, double seamMillimeters = 0)
    {
        Angle half = Angle.FromDegrees(interiorDegrees / 2);
        string x = (600 * half.SineRatio).ToString("R", CultureInfo.InvariantCulture);
        string y = (600 * half.CosineRatio).ToString("R", CultureInfo.InvariantCulture);
        PieceDraft draft = Drafts.Of($"0 0, {x} {y}, -{x} {y}", seamMillimeters);
        return draft with { Outline = draft.Outline.SetItem(0, draft.Outline[0] with { Kind = VertexKind.Marked }) };
    }

    private static int PointsBelowTheCorner(double interiorDegrees, double limitRatio)
    {
        Piece piece = (Wedge(interiorDegrees, 15) with { PointLimitRatio = limitRatio }).Made();
        return piece.CuttingLine.Outer.Count(point => point.Y < piece.Corners[0].Place.Y);
    }

    private static double TipDistanceMicrometers(Piece piece)
    {
        Point corner = piece.Corners[0].Place;
        return piece.CuttingLine.Outer.Min(point => Math.Sqrt(Math.Pow(point.X - corner.X, 2) + Math.Pow(point.Y - corner.Y, 2)));
    }
}
