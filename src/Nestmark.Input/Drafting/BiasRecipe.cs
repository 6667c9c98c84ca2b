using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>Bias strip: <c>bias: { length: 6 m, width: 4, from: strips }</c>; from a square or a leftover of given sides as one continuous strip.</summary>
internal sealed record BiasRecipe(MapEntry Shape, string Item, Measure Total, Length Width, string From, (Length Length, Length Width) Leftover) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Total];

    public static BiasRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? total = MeasureReader.Read(reader, "length", "length: 6 m with the length that is needed");
        Length width = MeasureReader.Length(reader, "width", "width: 4 with the width as cut");
        string from = reader.FindText("from")?.Text.Trim() ?? "strips";
        (Length, Length) leftover = from is "strips" or "square" ? default : reader.Read("from", text => Sides(text, reader.Context), default);
        StripWords.RefuseCut(shape, reader, cut);
        return total is null ? null : new BiasRecipe(shape, reader.Path, total, width, from, leftover) { Cut = null };
    }

    public override DraftingResult Draft(RecipeSite site)
    {
        BiasMeasures measures = new(site[Total], Width, site.Pattern.Seam);
        return From switch
        {
            "strips" => BiasDraft.Strips(measures, site.Cloth),
            "square" => BiasDraft.Square(measures, site.Cloth),
            _ => BiasDraft.Leftover(measures, Leftover.Length, Leftover.Width, site.Cloth),
        };
    }

    private static Reading<(Length Length, Length Width)> Sides(string text, JobContext context)
    {
        Reading<(Length Length, Length Width)> sides = SizeText.Read(text, context.Units);
        return text.Contains('x', StringComparison.OrdinalIgnoreCase) ? sides : new(default, DraftingFaults.FromForm(text));
    }
}
