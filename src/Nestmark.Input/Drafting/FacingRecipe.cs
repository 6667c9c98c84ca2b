using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;
using Nestmark.Pieces.Seams;

namespace Nestmark.Input.Drafting;

/// <summary>A facing of some edges of another piece: <c>facing: { of: front.D-E, width: 6 }</c>.</summary>
internal sealed record FacingRecipe(MapEntry Shape, string Item, Measure Of, SeamTerm Run, Length Width) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Of];

    public static FacingRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? of = MeasureReader.Read(reader, "of", "of: front.D-E, the edges that it faces");
        Length width = MeasureReader.Length(reader, "width", "width: 6");
        if (of is null)
            return null;
        if (of.BySize is [{ Terms: [{ IsRun: true, Times: 1 } run] }])
            return new FacingRecipe(shape, reader.Path, of, run, width) { Cut = cut };
        reader.Context.Error(of.Node, of.Item, DraftingFaults.FacingForm());
        return null;
    }

    public override DraftingResult Draft(RecipeSite site) =>
        FacingDraft.Draft(EdgeRun.Find(site.Find(Run.Piece)!, Run.Corners)!, Width, Cut, site.Cloth.Say);
}
