using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Bench.Garments;

/// <summary>Something to lay: so many sizes and garments of a coat on one cloth.</summary>
/// <param name="Name">Name on the command line.</param>
/// <param name="Patterns">Pieces of one garment.</param>
/// <param name="Sizes">Number of sizes.</param>
/// <param name="GarmentsOfEach">Garments of every size.</param>
/// <param name="Lay">How the cloth is spread.</param>
internal sealed record GarmentCase(string Name, IReadOnlyList<GarmentPattern> Patterns, int Sizes, int GarmentsOfEach, LayForm Lay)
{
    /// <summary>Every case, smallest first.</summary>
    public static IReadOnlyList<GarmentCase> All { get; } =
    [
        new("folded-25", GarmentPatterns.LongCoat, 1, 1, LayForm.Folded),
        new("open-25", GarmentPatterns.Coat, 1, 1, LayForm.Open),
        new("open-41", GarmentPatterns.LongCoat, 1, 1, LayForm.Open),
        new("open-75", GarmentPatterns.Coat, 3, 1, LayForm.Open),
        new("folded-150", GarmentPatterns.LongCoat, 6, 1, LayForm.Folded),
        new("open-150", GarmentPatterns.Coat, 6, 1, LayForm.Open),
        new("open-300", GarmentPatterns.Coat, 6, 2, LayForm.Open),
    ];

    /// <summary>The task: 150 cm cloth without nap, selvages of 1 cm.</summary>
    /// <param name="seed">Seed of the pieces, not of the search.</param>
    /// <param name="gap">Kept free between cutting lines.</param>
    /// <param name="tilt">Largest deviation from the grain.</param>
    public LayTask Task(long seed, Length gap, Angle tilt)
    {
        Cloth cloth = new()
        {
            Name = "shell",
            Width = Length.FromCentimeters(150),
            Selvage = Length.FromCentimeters(1),
            Lay = Lay,
            Nap = Nap.None,
            LengthShrinkageRatio = 0,
            WidthShrinkageRatio = 0,
            Ends = Length.Zero,
            Gap = gap,
            Tilt = tilt,
            Buying = new BuyingRule(Length.FromCentimeters(10), null),
        };
        return LayRules.TaskFor(cloth, Enumerable.Range(0, Sizes).SelectMany(size =>
            GarmentMaking.Make(Patterns, size, seed).Select(piece => new PieceOrder(piece, piece.Size, GarmentsOfEach))));
    }
}
