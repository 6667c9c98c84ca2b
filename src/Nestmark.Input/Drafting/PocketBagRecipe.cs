using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>A pocket bag for a side seam: <c>pocket_bag: { opening: 16, width: 15, depth: 28, above: 4 }</c>.</summary>
internal sealed record PocketBagRecipe(MapEntry Shape, string Item, Measure Opening, Length Width, Length Depth, Length Above) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Opening];

    public static PocketBagRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? opening = MeasureReader.Read(reader, "opening", "opening: 16 with the length of the opening");
        Length width = MeasureReader.Length(reader, "width", "width: 15 from the seam into the garment");
        Length depth = MeasureReader.Length(reader, "depth", "depth: 28 from top to bottom");
        Length above = reader.Read("above", reader.Context.ZeroOrMore, Length.Zero);
        return opening is null ? null : new PocketBagRecipe(shape, reader.Path, opening, width, depth, above) { Cut = cut };
    }

    public override DraftingResult Draft(RecipeSite site) =>
        PocketBag.Draft(new PocketMeasures(site[Opening], Width, Depth, Above, Cut), site.Cloth.Say);
}
