using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Tests.Pieces.Drafting;

/// <summary>Bands, waistbands and ruffles: counts by references/trade.md 9.3, lengths and folds by arithmetic.</summary>
public sealed class StripDraftTests
{
    [Theory]
    [InlineData(400, 138, 1, 3)]
    [InlineData(408, 138, 1, 3)]
    [InlineData(408.1, 138, 1, 4)]
    [InlineData(100, 138, 1, 1)]
    [InlineData(100, 2, 1, 0)]
    public void Strips_are_length_through_usable_width_less_two_allowances_rounded_up(double total, double width, double seam, int count) =>
        Assert.Equal(count, StripDraft.CountAcross(Cm(total), Cm(width), Cm(seam)));

    [Fact]
    public void Strips_of_a_ruffle_are_alike_and_join_to_its_length()
    {
        DraftedShape shape = StripDraft.Draft(Measures(400, 10, StripRun.Across), Cloth(138, 1)).Shape!;
        Assert.Equal(new CutQuantity(3, CutKind.Copies), shape.Cut);
        Piece strip = CircleSkirtTests.Made(shape);
        Assert.Equal(400 / 3.0, strip.SeamLine.Bounds.Height / 10_000.0, 3);
        Assert.Equal(10, strip.SeamLine.Bounds.Width / 10_000.0, 3);
        Assert.True(strip.CuttingLine.Bounds.Height <= 1_380_000);
        Assert.Equal("3 strips of 133.3 cm x 10 cm before allowances, 400 cm when joined.", shape.Said);
    }

    [Fact]
    public void Strips_across_folded_cloth_lie_with_their_middle_on_the_fold()
    {
        DraftedShape shape = StripDraft.Draft(Measures(400, 10, StripRun.Across), Cloth(138, 2)).Shape!;
        Assert.Equal(new CutQuantity(3, CutKind.OnFold), shape.Cut);
        Piece whole = Unfolding.Unfold(CircleSkirtTests.Made(shape));
        Assert.Equal(400 / 3.0, whole.SeamLine.Bounds.Height / 10_000.0, 3);
    }

    [Fact]
    public void One_band_along_folded_cloth_has_half_its_width_on_the_fold()
    {
        StripMeasures measures = Measures(95, 8, StripRun.Along) with { Make = StripMake.Double, Point = Cm(3) };
        DraftedShape shape = StripDraft.Draft(measures, Cloth(138, 2)).Shape!;
        Assert.Equal(new CutQuantity(1, CutKind.OnFold), shape.Cut);
        Piece whole = Unfolding.Unfold(CircleSkirtTests.Made(shape));
        // 95 x 8 less two corners of 3 x 4 / 2 each.
        Assert.Equal(95 * 8 - 12, Judge.ToNts(whole.SeamLine).Area / 1e8, 2);
        Piece open = CircleSkirtTests.Made(StripDraft.Draft(measures, Cloth(138, 1)).Shape!);
        Assert.Equal(95 * 8 - 12, Judge.ToNts(open.SeamLine).Area / 1e8, 2);
    }

    [Fact]
    public void What_does_not_fit_is_refused()
    {
        Assert.Contains("too narrow", StripDraft.Draft(Measures(95, 8, StripRun.Across), Cloth(2, 1)).What, StringComparison.Ordinal);
        Assert.Contains("do not fit", StripDraft.Draft(Measures(400, 8, StripRun.Across) with { Count = 2 }, Cloth(138, 1)).What, StringComparison.Ordinal);
        Assert.Contains("as long as", StripDraft.Draft(Measures(3, 8, StripRun.Along) with { Point = Cm(3) }, Cloth(138, 1)).What, StringComparison.Ordinal);
    }

    private static StripMeasures Measures(double total, double width, StripRun run) => new()
    {
        Total = Cm(total),
        Width = Cm(width),
        Run = run,
        Count = null,
        Cut = null,
        Seam = Cm(1),
        Make = StripMake.Single,
    };

    private static DraftingCloth Cloth(double width, int layers) =>
        new(Cm(width), layers, length => length.TotalCentimeters.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " cm");

    private static Length Cm(double centimeters) => Length.FromCentimeters(centimeters);
}
