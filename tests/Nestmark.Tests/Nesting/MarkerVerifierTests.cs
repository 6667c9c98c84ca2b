using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Nesting.Verification;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>The verifier must refuse each kind of fault, however small, and nothing else.</summary>
public sealed class MarkerVerifierTests
{
    private static readonly Piece Square = Tasks.PieceOf("square", Shapes.Of("0 0, 50 0, 50 50, 0 50"));

    [Fact]
    public void Touching_squares_are_sound() => Check(Length.Zero, new(0, 0), new(50_000, 0), expected: "");

    [Fact]
    public void One_micrometer_of_overlap_is_refused() => Check(Length.Zero, new(0, 0), new(49_999, 0), expected: "overlaps");

    [Fact]
    public void One_micrometer_beyond_the_edge_is_refused() => Check(Length.Zero, new(0, 0), new(60_000, 54_001), expected: "does not lie within 1 layers of the lay");

    [Fact]
    public void A_gap_kept_to_the_micrometer_is_sound() => Check(Length.FromMillimeters(5), new(0, 0), new(55_000, 0), expected: "");

    [Fact]
    public void A_gap_one_micrometer_short_is_refused() => Check(Length.FromMillimeters(5), new(0, 0), new(54_999, 0), expected: "too near");

    [Fact]
    public void A_gap_between_corners_counts_along_the_diagonal() =>
        // 3-4-5: corners 3 mm and 4 mm apart leave exactly 5 mm.
        Check(Length.FromMillimeters(5), new(0, 0), new(53_000, 50_000 + 4_000), expected: "");

    [Fact]
    public void The_same_place_twice_is_refused() => Check(Length.Zero, new(0, 0), new(0, 0), expected: "overlaps");

    [Fact]
    public void A_piece_inside_another_is_refused()
    {
        Piece small = Tasks.PieceOf("small", Shapes.Of("0 0, 10 0, 10 10, 0 10"));
        LayTask task = Tasks.Open(104, [.. Tasks.Demands(Square, 1, Turn.None), .. Tasks.Demands(small, 1, Turn.None)]);
        CheckPlacements(task, [Place(task, 0, Turn.None, new(0, 0)), Place(task, 1, Turn.None, new(20_000, 20_000))], "overlaps");
    }

    [Fact]
    public void A_turn_that_is_not_allowed_is_refused()
    {
        LayTask task = Tasks.Open(104, Tasks.Demands(Square, 1, Turn.None));
        CheckPlacements(task, [Place(task, 0, Turn.By(Angle.Half), new(50_000, 50_000))], "turned");
    }

    [Fact]
    public void A_size_that_lies_both_ways_is_refused()
    {
        LayTask task = Tasks.Open(104, Tasks.Demands(Square, 2, Turn.None, Turn.By(Angle.Half)).Select(demand => demand with { NapGroup = "M" }));
        CheckPlacements(task, [Place(task, 0, Turn.None, new(0, 0)), Place(task, 1, Turn.By(Angle.Half), new(100_000, 50_000))], "nap");
    }

    [Fact]
    public void A_fold_piece_one_micrometer_off_the_fold_is_refused()
    {
        Piece half = Tasks.PieceOf("half", Shapes.Of("0 0, 50 0, 50 40, 0 40"), new Segment(new(0, 0), new(50_000, 0)));
        LayTask task = new(LaySurface.Folded(Length.FromMillimeters(200)), Length.Zero,
            [new Demand(half, "", 1, 2, FoldContact.OnFold, [Turn.None], "")], []);
        CheckPlacements(task, [Place(task, 0, Turn.None, new(0, 1))], "on the fold");
        CheckPlacements(task, [Place(task, 0, Turn.None, new(0, 0))], "");
    }

    [Fact]
    public void A_missing_copy_is_refused()
    {
        LayTask task = Tasks.Open(104, Tasks.Demands(Square, 2, Turn.None));
        CheckPlacements(task, [Place(task, 0, Turn.None, new(0, 0))], "demands");
    }

    [Fact]
    public void A_wrong_lay_length_is_refused()
    {
        LayTask task = Tasks.Open(104, Tasks.Demands(Square, 1, Turn.None));
        Marker marker = new(task.Surface, Length.FromMillimeters(51), [Place(task, 0, Turn.None, new(0, 0))], []);
        Assert.Contains("lay length", string.Join("; ", MarkerVerifier.Violations(task, marker)), StringComparison.Ordinal);
    }

    private static void Check(Length gap, Point first, Point second, string expected)
    {
        LayTask task = Tasks.Open(104, Tasks.Demands(Square, 2, Turn.None)) with { Gap = gap };
        CheckPlacements(task, [Place(task, 0, Turn.None, first), Place(task, 1, Turn.None, second)], expected);
    }

    private static void CheckPlacements(LayTask task, Placement[] placements, string expected)
    {
        Length length = Length.FromMicrometers(placements.Max(placement => placement.CuttingLine.Bounds.MaxX));
        string violations = string.Join("; ", MarkerVerifier.Violations(task, new Marker(task.Surface, length, [.. placements], [])));
        if (expected.Length == 0)
            Assert.Equal("", violations);
        else
            Assert.Contains(expected, violations, StringComparison.Ordinal);
    }

    private static Placement Place(LayTask task, int demand, Turn turn, Point offset)
    {
        Demand found = task.Demands[demand];
        return new Placement(found.Piece, found.Size, found.Copy, found.Layers, found.Contact, turn, offset);
    }
}
