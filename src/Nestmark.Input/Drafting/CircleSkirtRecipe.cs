using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>A skirt from a part of a circle: <c>circle_skirt: { waist: 70, length: 60, part: half, panels: 2, hem: 2, waist_seam: 1, edges: seam }</c>.</summary>
internal sealed record CircleSkirtRecipe(MapEntry Shape, string Item, Measure Waist, Measure Long, double CircleRatio) : Recipe(Shape, Item)
{
    private static readonly (string, CircleEdges)[] EdgeWords = [("seam", CircleEdges.SeamLine), ("cut", CircleEdges.CutLine)];

    public override ImmutableArray<Measure> Measures => [Waist, Long];

    public required int? Panels { get; init; }

    public required Length? WaistSeam { get; init; }

    public required Length? Hem { get; init; }

    public required Length? Opening { get; init; }

    public required CircleEdges Edges { get; init; }

    public static CircleSkirtRecipe? Read(MapEntry shape, MapReader reader, CutQuantity? cut)
    {
        Measure? waist = MeasureReader.Read(reader, "waist", "waist: 70 with the length of the waist line");
        Measure? length = MeasureReader.Read(reader, "length", "length: 60 from waist to hem");
        double part = reader.Read("part", Part, 1);
        StripWords.RefuseCut(shape, reader, cut);
        int? panels = reader.Find("panels") is null ? null : reader.Read("panels", text => RatioText.Count(text, "panels"), 1);
        Length? waistSeam = Optional(reader, "waist_seam");
        Length? hem = Optional(reader, "hem");
        Length? opening = reader.Find("opening") is null ? null : reader.Read("opening", reader.Context.AboveZero, Length.FromMillimeters(1));
        CircleEdges edges = reader.ReadWord("edges", EdgeWords, CircleEdges.SeamLine);
        return waist is null || length is null ? null : new CircleSkirtRecipe(shape, reader.Path, waist, length, part)
        {
            Cut = null,
            Panels = panels,
            WaistSeam = waistSeam,
            Hem = hem,
            Opening = opening,
            Edges = edges,
        };
    }

    public override DraftingResult Draft(RecipeSite site) => CircleSkirt.Draft(
        new CircleMeasures
        {
            Waist = site[Waist],
            SkirtLength = site[Long],
            CircleRatio = CircleRatio,
            Panels = Panels,
            Seam = site.Pattern.Seam,
            WaistSeam = WaistSeam ?? site.Pattern.Seam,
            Hem = Hem ?? site.Pattern.Seam,
            Opening = Opening,
            Edges = Edges,
        },
        site.Cloth);

    private static Length? Optional(MapReader reader, string key) =>
        reader.Find(key) is null ? null : reader.Read(key, reader.Context.ZeroOrMore, Length.Zero);

    /// <summary>"full", "half", "quarter", a fraction as 3/4, or an angle as 120 deg.</summary>
    private static Reading<double> Part(string text)
    {
        double? named = text.Trim() switch { "full" => 1, "half" => 0.5, "quarter" => 0.25, _ => null };
        if (named is { } ratio)
            return new(ratio, null);
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(0, number.Fault);
        decimal part = scanned.Rest is "deg" or "°" ? scanned.Value / 360 : scanned.Value;
        return scanned.Rest is "" or "deg" or "°" && part is >= 1 / 36m and <= 1 ? new((double)part, null) : new(0, DraftingFaults.PartForm(text));
    }
}
