using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>A waistband as long as a seam: <c>waistband: { along: 2 x front.C-D + 2 x back.C-D, width: 4, overlap: 3, made: double }</c>.</summary>
internal sealed record WaistbandRecipe(MapEntry Shape, string Item, Measure Along, Length Width, Length Overlap, StripMake Make, StripRun Run, int? Strips) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Along];

    public static WaistbandRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? along = MeasureReader.Read(reader, "along", "along: 2 x front.C-D + 2 x back.C-D, the edges that it is sewn to");
        Length width = MeasureReader.Length(reader, "width", "width: 4 with the finished width");
        Length overlap = reader.Read("overlap", reader.Context.ZeroOrMore, Length.Zero);
        StripMake make = reader.ReadWord("made", StripWords.Makes, StripMake.Double);
        StripRun run = reader.ReadWord("run", StripWords.Runs, StripRun.Along);
        int? strips = StripWords.Count(reader);
        StripWords.RefuseCutAcross(shape, reader, run, strips, cut);
        return along is null ? null : new WaistbandRecipe(shape, reader.Path, along, width, overlap, make, run, strips) { Cut = cut };
    }

    public override DraftingResult Draft(RecipeSite site)
    {
        Length along = site[Along];
        IEnumerable<(string, Length)> joins = site.Joins(Along, site.Pattern.Size).Select(join => ("", join));
        DraftingResult result = StripDraft.Draft(
            new StripMeasures
            {
                Total = along + Overlap,
                Width = Make == StripMake.Double ? Width * 2 : Width,
                Run = Run,
                Count = Strips,
                Cut = Cut,
                Seam = site.Pattern.Seam,
                Make = Make,
                Notches = Overlap > Length.Zero ? [.. joins, ("overlap", along)] : [.. joins],
            },
            site.Cloth);
        return result.Shape is not { } shape ? result
            : result with { Shape = shape with { Said = $"Sewn along {site.Cloth.Say(along)}, overlap {site.Cloth.Say(Overlap)}: {shape.Said}" } };
    }
}
