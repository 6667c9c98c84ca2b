using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>
/// Bands and ties, <c>band: { length: 90, width: 4, made: double, point: 3, run: along, strips: 1 }</c>, and bands as long as the edges that they are
/// sewn to, <c>waistband: { along: 2 x front.C-D + 2 x back.C-D, width: 4, overlap: 3 }</c>.
/// </summary>
internal sealed record BandRecipe(MapEntry Shape, string Item, Measure Total, Length Width) : Recipe(Shape, Item)
{
    public override ImmutableArray<Measure> Measures => [Total];

    public required StripMake Make { get; init; }

    public required StripRun Run { get; init; }

    public required int? Strips { get; init; }

    public Length Point { get; init; }

    /// <summary>How far it reaches past the edges that it is sewn to; <c>null</c> for a band with a length of its own.</summary>
    public Length? Overlap { get; init; }

    public static BandRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut) =>
        Read(shape, reader, cut, "length", "length: 90 with the finished length") is { } band
            ? band with { Point = reader.Read("point", reader.Context.ZeroOrMore, Length.Zero) }
            : null;

    public static BandRecipe? ReadWaistband(MapEntry shape, MapReader reader, CutQuantity? cut) =>
        Read(shape, reader, cut, "along", "along: 2 x front.C-D + 2 x back.C-D, the edges that it is sewn to") is { } band
            ? band with { Overlap = reader.Read("overlap", reader.Context.ZeroOrMore, Length.Zero) }
            : null;

    public override DraftingResult Draft(RecipeSite site)
    {
        Length sewn = site[Total];
        Length overlap = Overlap ?? Length.Zero;
        DraftingResult result = StripDraft.Draft(
            new StripMeasures
            {
                Total = sewn + overlap,
                Width = Make == StripMake.Double ? Width * 2 : Width,
                Run = Run,
                Count = Strips,
                Cut = Cut,
                Seam = site.Pattern.Seam,
                Make = Make,
                Point = Point,
                Notches = Overlap is null ? [] : Notches(site, sewn, overlap),
            },
            site.Cloth);
        return result.Shape is not { } shape || Overlap is null ? result
            : result with { Shape = shape with { Said = $"Sewn along {site.Cloth.Say(sewn)}, overlap {site.Cloth.Say(overlap)}: {shape.Said}" } };
    }

    private static BandRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut, string key, string example)
    {
        Measure? total = MeasureReader.Read(reader, key, example);
        Length width = MeasureReader.Length(reader, "width", "width: 4 with the finished width");
        StripMake make = reader.ReadWord("made", StripWords.Makes, StripMake.Double);
        StripRun run = reader.ReadWord("run", StripWords.Runs, StripRun.Along);
        int? strips = StripWords.Count(reader);
        StripWords.RefuseCutAcross(shape, reader, run, strips, cut);
        if (total is not null)
            return new BandRecipe(shape, reader.Path, total, width) { Cut = cut, Make = make, Run = run, Strips = strips };
        // Without its length the rest of the band is known all the same.
        reader.Find(key == "along" ? "overlap" : "point");
        return null;
    }

    /// <summary>Where the edges that it is sewn to join, and where it begins to overlap.</summary>
    private ImmutableArray<(string, Length)> Notches(RecipeSite site, Length sewn, Length overlap)
    {
        IEnumerable<(string, Length)> joins = site.Joins(Total, site.Pattern.Size).Select(join => ("", join));
        return overlap > Length.Zero ? [.. joins, ("overlap", sewn)] : [.. joins];
    }
}
