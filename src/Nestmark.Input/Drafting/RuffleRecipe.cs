using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Seams;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>A ruffle by ratio: <c>ruffle: { edge: 2 x skirt.A-B, ratio: 2 to 1, depth: 12, run: across }</c>.</summary>
/// <remarks>Ratio without the key: 2 to 1, within the usual 1.5 to 3 (references/trade.md 8, [STC]).</remarks>
internal sealed record RuffleRecipe(MapEntry Shape, string Item, Measure Edge, double Ratio, Length Depth, StripRun Run, int? Strips) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Edge];

    public static RuffleRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? edge = MeasureReader.Read(reader, "edge", "edge: 2 x skirt.A-B, or the length that it is gathered to");
        double ratio = reader.Read("ratio", TakeUpReader.Ratio, 2);
        Length depth = MeasureReader.Length(reader, "depth", "depth: 12 with its finished depth");
        StripRun run = reader.ReadWord("run", StripWords.Runs, StripRun.Across);
        int? strips = StripWords.Count(reader);
        StripWords.RefuseCut(shape, reader, cut);
        return edge is null ? null : new RuffleRecipe(shape, reader.Path, edge, ratio, depth, run, strips) { Cut = null };
    }

    public override DraftingResult Draft(RecipeSite site)
    {
        Length edge = site[Edge];
        DraftingResult result = StripDraft.Draft(
            new StripMeasures
            {
                Total = Length.FromMillimeters(Math.Min(900_000, edge.TotalMillimeters * Ratio)),
                Width = Depth,
                Run = Run,
                Count = Strips,
                Cut = null,
                Seam = site.Pattern.Seam,
                Make = StripMake.Single,
            },
            site.Cloth);
        string ratio = Yardage.Seams.SeamWords.Ratio(Ratio);
        return result.Shape is not { } shape ? result
            : result with { Shape = shape with { Said = $"Gathered {ratio} to {site.Cloth.Say(edge)}: {shape.Said}" } };
    }
}
