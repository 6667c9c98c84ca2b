using System.Collections.Immutable;
using Nestmark.Bench.Garments;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Bench;

/// <summary>The invented garments that the bench measures with are what issue 3 asks for.</summary>
public sealed class GarmentTests
{
    // Issue 3: 25 pieces, 60 to 250 points each after allowances.
    [Theory]
    [InlineData(0, 1)]
    [InlineData(5, 1)]
    [InlineData(2, 7)]
    public void Cutting_lines_have_60_to_250_points_and_do_not_cross_themselves(int size, long seed)
    {
        ImmutableArray<Piece> pieces = GarmentMaking.Make(GarmentPatterns.LongCoat, size, seed);
        Assert.Equal(25, pieces.Length);
        Assert.All(pieces, piece =>
        {
            Assert.InRange(piece.CuttingLine.Outer.Length, 60, 250);
            Assert.True(Clipping.IsSimple(piece.CuttingLine), piece.Name);
            Assert.InRange(piece.Notches.Length, 2, 6);
            Assert.True(piece.CuttingLine.AreaSquareMillimeters > piece.SeamLine.AreaSquareMillimeters);
            Assert.Equal(piece.Cut.Kind == CutKind.OnFold, piece.FoldEdge is not null);
        });
    }

    [Fact]
    public void A_garment_has_pieces_on_the_fold_pairs_and_copies()
    {
        ImmutableArray<Piece> pieces = GarmentMaking.Make(GarmentPatterns.Coat, 0, 1);
        Assert.Equal([2, 8, 5], [.. ((CutKind[])[CutKind.Copies, CutKind.Pairs, CutKind.OnFold]).Select(kind => pieces.Count(piece => piece.Cut.Kind == kind))]);
    }

    [Theory]
    [InlineData("folded-25", 25)]
    [InlineData("open-25", 25)]
    [InlineData("open-41", 41)]
    [InlineData("open-75", 75)]
    [InlineData("folded-150", 150)]
    [InlineData("open-150", 150)]
    [InlineData("open-300", 300)]
    public void Each_case_lays_as_many_pieces_as_it_says(string name, int pieces)
    {
        LayTask task = Assert.Single(GarmentCase.All, one => one.Name == name).Task(1, Length.Zero, Angle.Zero);
        Assert.Empty(task.Impossible);
        Assert.Equal(pieces, task.Demands.Length);
    }

    [Fact]
    public void The_same_seed_gives_the_same_pieces_and_another_seed_others()
    {
        Polygon[] first = Lines(1);
        Polygon[] again = Lines(1);
        Polygon[] other = Lines(2);
        for (int i = 0; i < first.Length; i++)
        {
            Assert.Equal(first[i].Outer.ToArray(), again[i].Outer.ToArray());
            Assert.NotEqual(first[i].Outer.ToArray(), other[i].Outer.ToArray());
        }
    }

    [Fact]
    public void Larger_sizes_are_larger()
    {
        double[] areas = [.. Enumerable.Range(0, 6).Select(size => GarmentMaking.Make(GarmentPatterns.Coat, size, 1).Sum(piece => piece.CuttingLine.AreaSquareMillimeters))];
        Assert.Equal(areas.Order(), areas);
        Assert.InRange(areas[5] / areas[0], 1.15, 1.35);
    }

    private static Polygon[] Lines(long seed) => [.. GarmentMaking.Make(GarmentPatterns.Coat, 1, seed).Select(piece => piece.CuttingLine)];
}
