using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>Ties and bands: <c>band: { length: 90, width: 4, made: double, point: 3, run: along, strips: 1 }</c>.</summary>
internal sealed record BandRecipe(MapEntry Shape, string Item, Measure Total, Length Width, StripMake Make, Length Point, StripRun Run, int? Strips) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Total];

    public static BandRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? total = MeasureReader.Read(reader, "length", "length: 90 with the finished length");
        Length width = MeasureReader.Length(reader, "width", "width: 4 with the finished width");
        StripMake make = reader.ReadWord("made", StripWords.Makes, StripMake.Double);
        Length point = reader.Read("point", reader.Context.ZeroOrMore, Length.Zero);
        StripRun run = reader.ReadWord("run", StripWords.Runs, StripRun.Along);
        int? strips = StripWords.Count(reader);
        StripWords.RefuseCutAcross(shape, reader, run, strips, cut);
        return total is null ? null : new BandRecipe(shape, reader.Path, total, width, make, point, run, strips) { Cut = cut };
    }

    public override DraftingResult Draft(RecipeSite site) => StripDraft.Draft(
        new StripMeasures
        {
            Total = site[Total],
            Width = Make == StripMake.Double ? Width * 2 : Width,
            Run = Run,
            Count = Strips,
            Cut = Cut,
            Seam = site.Pattern.Seam,
            Make = Make,
            Point = Point,
        },
        site.Cloth);
}
