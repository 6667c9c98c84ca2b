using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;
using Nestmark.Pieces.Seams;

namespace Nestmark.Tests.Pieces.Drafting;

/// <summary>Circle skirts against the worked values of references/trade.md 9.1; drafted panels measured again by NetTopologySuite.</summary>
public sealed class CircleSkirtTests
{
    [Theory]
    [InlineData(70, 1.0, 11.141)]
    [InlineData(70, 0.75, 14.854)]
    [InlineData(70, 0.5, 22.282)]
    [InlineData(70, 1 / 3.0, 33.423)]
    [InlineData(70, 0.25, 44.563)]
    [InlineData(110, 1.0, 17.507)]
    [InlineData(110, 0.75, 23.343)]
    [InlineData(110, 0.5, 35.014)]
    [InlineData(110, 1 / 3.0, 52.521)]
    [InlineData(110, 0.25, 70.028)]
    [InlineData(26 * 2.54, 1.0, 4.138 * 2.54)]
    [InlineData(26 * 2.54, 0.5, 8.276 * 2.54)]
    [InlineData(26 * 2.54, 0.25, 16.552 * 2.54)]
    public void Waist_radii_are_those_of_the_table(double waist, double part, double radius) =>
        Assert.Equal(radius, CircleRadii.WaistMillimeters(Length.FromCentimeters(waist), part) / 10, 2);

    [Theory]
    [InlineData(1.0, 17.14)]
    [InlineData(0.5, 35.29)]
    public void Seams_are_added_before_the_part_of_the_circle_is_taken(double part, double radius)
    {
        // [SPM]: (110 + 4 x 1) / 2π - 1 = 17.14; the half circle 35.29, not the 34.65 that doubling first gives.
        double cut = CircleRadii.CutWaistMillimeters(Length.FromCentimeters(110), part, 4, Length.FromCentimeters(1), Length.FromCentimeters(1)) / 10;
        Assert.Equal(radius, cut, 2);
        Assert.NotEqual(34.65, cut, 1);
        Piece panel = Made(Measures(110, 60, part, 2) with { Edges = CircleEdges.CutLine }, 300);
        Assert.Equal(110, 2 * Waist(panel), 1);
        // The panel is cut as an exact part of the circle: its straight cut edges and its cut waist enclose that radius.
        double inner = panel.CuttingLine.Outer.Min(point => (point - Middle(panel)).NormMicrometers) / 10_000;
        Assert.Equal(cut, inner, 1);
    }

    [Theory]
    [InlineData(1.0, 2, 446.99)]
    [InlineData(0.5, 1, 258.50)]
    [InlineData(1.0, 4, 446.99)]
    [InlineData(0.75, 3, 352.74)]
    public void Waist_hem_and_area_of_all_panels_are_those_of_the_circle(double part, int panels, double hem)
    {
        // 70 cm waist, 60 cm long: full R 71.141, hem 446.99, area 15,510 cm²; half hem 258.50; three quarters 2π 0.75 (14.854 + 60) = 352.74.
        Piece panel = Made(Measures(70, 60, part, panels), 500);
        Assert.Equal(70, panels * Waist(panel), 1);
        Assert.Equal(hem, panels * EdgeRun.Find(panel, HemOf(panel))!.LengthMillimeters / 10, 0.2);
        double area = panels * Judge.ToNts(panel.SeamLine).Area / 1e8;
        double inner = 70 / (2 * Math.PI * part);
        Assert.Equal(Math.PI * part * ((inner + 60) * (inner + 60) - inner * inner), area, 15.0);
        if (part == 1)
            Assert.Equal(15_510, area, 15.0);
    }

    [Fact]
    public void The_longest_full_circle_on_148_cm_is_60_86_and_half_circle_123_72()
    {
        // trade.md 9.1: usable width 2(R + hem), and R + hem with the diameter along the selvage.
        DraftingCloth cloth = Cloth(148, 1);
        CircleMeasures full = Measures(70, 60, 1, 2) with { Seam = Length.Zero };
        Assert.Equal(60.86, CircleSkirt.LongestLength(full, 2, Cloth(148, 2)).TotalCentimeters, 0.02);
        CircleMeasures half = Measures(70, 60, 0.5, 1) with { Seam = Length.Zero };
        Assert.Equal(123.72, CircleSkirt.LongestLength(half, 1, cloth).TotalCentimeters, 0.02);
    }

    [Fact]
    public void Panels_are_as_few_as_the_cloth_allows_and_all_fit()
    {
        int before = 0;
        foreach (double width in (double[])[320, 160, 120, 90, 70])
        {
            DraftedShape shape = CircleSkirt.Draft(Measures(70, 60, 1, null), Cloth(width, 1)).Shape!;
            Assert.True(shape.Cut.Count >= before);
            before = shape.Cut.Count;
            Assert.True(Made(shape).CuttingLine.Bounds.Height <= width * 10_000);
            Assert.StartsWith(FormattableString.Invariant($"{shape.Cut.Count} panels of {360.0 / shape.Cut.Count:0.##} degrees"), shape.Said, StringComparison.Ordinal);
        }
        Assert.True(before > 4);
    }

    [Fact]
    public void An_odd_number_of_panels_on_folded_cloth_lies_on_the_fold()
    {
        DraftedShape shape = CircleSkirt.Draft(Measures(70, 55, 0.75, 3), Cloth(138, 2)).Shape!;
        Assert.Equal(new CutQuantity(3, CutKind.OnFold), shape.Cut);
        Piece half = Made(shape);
        Assert.Equal(70, 6 * Waist(half), 1);
        Assert.NotNull(half.FoldEdge);
    }

    [Fact]
    public void A_skirt_that_is_too_long_is_refused_with_the_longest_that_works()
    {
        DraftingResult result = CircleSkirt.Draft(Measures(70, 130, 0.5, 1) with { Seam = Length.Zero }, Cloth(148, 1));
        Assert.Null(result.Shape);
        Assert.Contains("The longest that works is 123.7 cm", result.Hint, StringComparison.Ordinal);
        Assert.Contains("panels: 2", CircleSkirt.Draft(Measures(70, 30, 0.9, 1), Cloth(148, 1)).Hint, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void A_full_circle_in_one_piece_is_a_ring_as_long_as_the_cloth_allows(int layers)
    {
        // trade.md 9.1: usable width 2(R + hem): 148 cm cloth, waist 70, hem 2, longest 60.86 cm; cutting lines r less waist allowance, R plus hem.
        CircleMeasures measures = Measures(70, 60, 1, 1);
        DraftingCloth cloth = Cloth(148, layers);
        Assert.Equal(60.86, CircleSkirt.LongestLength(measures, 1, cloth).TotalCentimeters, 0.02);
        DraftedShape ring = CircleSkirt.Draft(measures, cloth).Shape!;
        Assert.Equal(layers == 1 ? new CutQuantity(1, CutKind.Copies) : new CutQuantity(1, CutKind.OnFold), ring.Cut);
        Piece piece = Made(ring);
        Piece whole = layers == 1 ? piece : Unfolding.Unfold(piece);
        Assert.Equal(2 * (71.141 + 2), whole.CuttingLine.Bounds.Height / 10_000.0, 0.02);
        Assert.Equal(446.99, Judge.ToNts(whole.SeamLine).Length / 10_000, 0.1);
        // The ring between the waist line drawn on it and the hem: 15,510 cm².
        PieceLine[] waist = [.. whole.Lines.Where(line => line.Label.Length == 0)];
        double round = waist.Sum(line => line.Points.Zip(line.Points.Skip(1), (from, to) => (to - from).NormMicrometers).Sum()) / 10_000;
        Assert.Equal(70, round, 0.05);
        Assert.Equal(15_510, Judge.ToNts(whole.SeamLine).Area / 1e8 - Math.PI * 11.141 * 11.141, 15.0);
        Assert.Contains(whole.Lines, line => line.Label == "cut out the waist");
        PieceLine slit = Assert.Single(whole.Lines, line => line.Label.StartsWith("slit 20 cm", StringComparison.Ordinal));
        Assert.Equal(21, (slit.Points[1] - slit.Points[0]).NormMicrometers / 10_000, 0.01);
    }

    [Fact]
    public void A_ring_that_cannot_be_is_refused_with_a_remedy()
    {
        Assert.Contains("The longest that works is 60.", CircleSkirt.Draft(Measures(70, 61, 1, 1), Cloth(148, 1)).Hint, StringComparison.Ordinal);
        Assert.Contains("shorter opening", CircleSkirt.Draft(Measures(70, 18, 1, 1), Cloth(148, 1)).Hint, StringComparison.Ordinal);
        Assert.Contains("smaller waist_seam", CircleSkirt.Draft(Measures(6, 60, 1, 1), Cloth(148, 1)).Hint, StringComparison.Ordinal);
        Assert.Contains("Take opening out", CircleSkirt.Draft(Measures(70, 60, 1, null) with { Opening = Length.FromCentimeters(12) }, Cloth(148, 1)).Hint, StringComparison.Ordinal);
    }

    /// <summary>Where the lines of both straight cut edges of a panel meet; for a half circle the middle between them.</summary>
    private static Point Middle(Piece panel)
    {
        Point[] waist = [.. EdgeRun.Find(panel, WaistOf(panel))!.Points];
        // Center of the circle through three places of the waist (geometry).
        (double X, double Y) a = (waist[0].X, waist[0].Y);
        (double X, double Y) b = (waist[waist.Length / 2].X, waist[waist.Length / 2].Y);
        (double X, double Y) c = (waist[^1].X, waist[^1].Y);
        double d = 2 * (a.X * (b.Y - c.Y) + b.X * (c.Y - a.Y) + c.X * (a.Y - b.Y));
        double x = ((a.X * a.X + a.Y * a.Y) * (b.Y - c.Y) + (b.X * b.X + b.Y * b.Y) * (c.Y - a.Y) + (c.X * c.X + c.Y * c.Y) * (a.Y - b.Y)) / d;
        double y = ((a.X * a.X + a.Y * a.Y) * (c.X - b.X) + (b.X * b.X + b.Y * b.Y) * (a.X - c.X) + (c.X * c.X + c.Y * c.Y) * (b.X - a.X)) / d;
        return new Point((long)Math.Round(x), (long)Math.Round(y));
    }

    private static double Waist(Piece panel) => EdgeRun.Find(panel, WaistOf(panel))!.LengthMillimeters / 10;

    // The hem is the longest curved edge and the waist the other; both have many points.
    private static System.Collections.Immutable.ImmutableArray<string> HemOf(Piece panel) => Curved(panel).MaxBy(run => run.LengthMillimeters)!.Corners;

    private static System.Collections.Immutable.ImmutableArray<string> WaistOf(Piece panel) => Curved(panel).MinBy(run => run.LengthMillimeters)!.Corners;

    private static IEnumerable<EdgeRun> Curved(Piece panel) =>
        panel.Edges.Select(edge => EdgeRun.Find(panel, [edge.From, edge.To])!).Where(run => run.Points.Length > 2);

    private static CircleMeasures Measures(double waist, double length, double part, int? panels) => new()
    {
        Waist = Length.FromCentimeters(waist),
        SkirtLength = Length.FromCentimeters(length),
        CircleRatio = part,
        Panels = panels,
        Seam = Length.FromCentimeters(1),
        WaistSeam = Length.FromCentimeters(1),
        Hem = Length.FromCentimeters(2),
        Edges = CircleEdges.SeamLine,
    };

    private static DraftingCloth Cloth(double width, int layers) =>
        new(Length.FromCentimeters(width), layers, length => length.TotalCentimeters.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " cm");

    private static Piece Made(CircleMeasures measures, double width) => Made(CircleSkirt.Draft(measures, Cloth(width, 1)).Shape!);

    internal static Piece Made(DraftedShape shape, double seamMillimeters = 10) => PieceMaking.Make(Drafts.Of(shape.Outline, seamMillimeters) with
    {
        Cut = shape.Cut,
        Edges = shape.Edges,
        FoldLine = shape.FoldLine,
        PointLimitRatio = 2.5,
        Notches = shape.Notches,
        Lines = shape.Lines,
    }).Piece!;
}
