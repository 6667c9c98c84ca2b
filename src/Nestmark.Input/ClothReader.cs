using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>Reads the key cloths.</summary>
/// <remarks>
/// Defaults (references/trade.md 13 unless another place is named): selvage 1 cm or 1/2 in, the round ends of 10 to 15 mm each side;
/// ends 2.5 cm or 1 in; step 10 cm or 1/8 yd; shrinkage, gap and tilt 0; spread folded, the way small pieces' pairs and halves are cut at home.
/// Nap one-way: a one-way marker is right on any cloth, while a marker without nap spoils a cloth with one, and cut cloth cannot be uncut.
/// Width of the cloth that stands in when none is given: 140 cm or 45 in (trade.md 1.1).
/// </remarks>
internal static class ClothReader
{
    private static readonly (string, LayForm)[] Lays = [.. LayWords.All.Select(pair => (pair.Word, pair.Form))];

    private static readonly (string, ClothFaces)[] Faces = [("one right side", ClothFaces.OneRightSide), ("two right sides", ClothFaces.TwoRightSides)];

    private static readonly (string, ClothStretch)[] Stretches = [("alike", ClothStretch.Alike), ("across", ClothStretch.Across), ("along", ClothStretch.Along)];

    private static readonly (string, Nap)[] Naps =
        [("none", Nap.None), ("one-way", Nap.OneWay), ("by-size", Nap.BySize), ("by size", Nap.BySize)];

    /// <summary>The cloths in the order of the file; without the key one stands in, with a note. Empty after some errors.</summary>
    public static ImmutableArray<Cloth> Read(MapReader job, JobContext context)
    {
        if (job.Find("cloths") is not MapEntry entry)
            return [StandIn(job, context)];
        if (context.AsMap(entry.Value, "cloths") is not MapReader cloths)
            return [];
        if (cloths.Map.Entries.IsEmpty)
            context.Error(entry.Value, "cloths", JobFaults.NoCloths());
        return [.. cloths.Map.Entries.Select(cloth => One(cloth, context)).OfType<Cloth>()];
    }

    private static Cloth StandIn(MapReader job, JobContext context)
    {
        Length width = context.Default(1400, 45);
        string text = context.System == MeasureSystem.Imperial ? "45 in" : "140 cm";
        context.Note(job.Map, "cloths", JobFaults.DefaultCloth(text));
        return Made(new MapReader(new MapNode([], 0, 0), "cloths", context), "cloth", width, context);
    }

    private static Cloth? One(MapEntry entry, JobContext context)
    {
        string name = entry.Key.Text;
        string path = "cloths." + name;
        if (!JobNames.IsGood(name))
            context.Error(entry.Key, path, JobFaults.BadName(name));
        if (context.AsMap(entry.Value, path) is not MapReader reader)
            return null;
        if (reader.Find("width") is null)
            context.Error(entry.Key, path, JobFaults.MissingKey("width", "width: 140 with the full width of the cloth, selvages included"));
        Length width = reader.Read("width", context.AboveZero, Length.Zero);
        Cloth cloth = Made(reader, name, width, context);
        reader.RefuseTheRest();
        if (width > Length.Zero)
            CheckWidth(cloth, entry.Key, path, context);
        return cloth.FoldDepth is { } depth && depth * 2 >= cloth.UsableWidth ? cloth with { FoldDepth = null } : cloth;
    }

    private static Cloth Made(MapReader reader, string name, Length width, JobContext context)
    {
        (double lengthShrinkage, double widthShrinkage) = Shrinkage(reader, context);
        LayForm lay = reader.ReadWord("lay", Lays, LayForm.Folded);
        (Length nearShade, Length farShade) = Shade(reader, context);
        return new Cloth
        {
            Name = name,
            Width = width,
            Selvage = reader.Read("selvage", context.ZeroOrMore, lay == LayForm.Tubular ? Length.Zero : context.Default(10, 0.5)),
            Lay = lay,
            FoldDepth = FoldDepth(reader, lay, context),
            Flaws = FlawReader.Read(reader, width, lay, context),
            Repeat = PrintReader.Repeat(reader, context),
            Border = PrintReader.Border(reader, context),
            NearShade = nearShade,
            FarShade = farShade,
            Faces = reader.ReadWord("faces", Faces, ClothFaces.OneRightSide),
            Stretch = reader.ReadWord("stretch", Stretches, ClothStretch.Alike),
            Nap = reader.ReadWord("nap", Naps, Nap.OneWay),
            LengthShrinkageRatio = lengthShrinkage,
            WidthShrinkageRatio = widthShrinkage,
            Ends = reader.Read("ends", context.ZeroOrMore, context.Default(25, 1)),
            Gap = reader.Read("gap", context.ZeroOrMore, Length.Zero),
            Tilt = reader.Read("tilt", RatioText.Degrees, Angle.Zero),
            Buying = Buying(reader, context),
        };
    }

    /// <summary>Widths of the off-color strips beside the selvages: one figure for both, or near and far.</summary>
    private static (Length Near, Length Far) Shade(MapReader reader, JobContext context)
    {
        if (reader.Find("shade")?.Value is not MapNode)
        {
            Length both = reader.Read("shade", context.ZeroOrMore, Length.Zero);
            return (both, both);
        }
        MapReader sides = context.AsMap(reader.Find("shade")!.Value, reader.PathOf("shade"))!;
        (Length, Length) shade = (sides.Read("near", context.ZeroOrMore, Length.Zero), sides.Read("far", context.ZeroOrMore, Length.Zero));
        sides.RefuseTheRest();
        return shade;
    }

    /// <summary>The depth of a partial fold; a key without a partial fold is a mistake worth a word.</summary>
    private static Length? FoldDepth(MapReader reader, LayForm lay, JobContext context)
    {
        if (reader.Find("fold_depth") is not MapEntry entry)
            return null;
        Length depth = reader.Read("fold_depth", context.AboveZero, Length.Zero);
        if (lay != LayForm.PartialFold)
            context.Error(entry.Key, reader.PathOf("fold_depth"), JobFaults.DepthWithoutPartialFold());
        return lay == LayForm.PartialFold && depth > Length.Zero ? depth : null;
    }

    private static (double Length, double Width) Shrinkage(MapReader reader, JobContext context)
    {
        if (reader.Find("shrinkage")?.Value is not MapNode)
        {
            double both = reader.Read("shrinkage", RatioText.Percent, 0);
            return (both, both);
        }
        MapReader parts = context.AsMap(reader.Find("shrinkage")!.Value, reader.PathOf("shrinkage"))!;
        (double, double) shrinkage = (parts.Read("length", RatioText.Percent, 0), parts.Read("width", RatioText.Percent, 0));
        parts.RefuseTheRest();
        return shrinkage;
    }

    private static BuyingRule Buying(MapReader reader, JobContext context)
    {
        Length step = context.System == MeasureSystem.Imperial ? Length.FromYards(0.125) : Length.FromCentimeters(10);
        if (reader.Find("buy") is not MapEntry entry || context.AsMap(entry.Value, reader.PathOf("buy")) is not MapReader buy)
            return new BuyingRule(step, null);
        BuyingRule rule = new(buy.Read("step", context.AboveZero, step), buy.Read<ClothPrice?>("price", text => ReadPrice(text), null));
        buy.RefuseTheRest();
        return rule;
    }

    private static Reading<ClothPrice?> ReadPrice(string text)
    {
        Reading<ClothPrice> price = PriceText.Read(text);
        return new(price.Value, price.Fault);
    }

    private static void CheckWidth(Cloth cloth, TextNode name, string path, JobContext context)
    {
        if (cloth.UsableWidth <= Length.Zero)
            context.Error(name, path + ".width", JobFaults.NoUsableWidth(Shown(cloth.UsableWidth)));
        else if (cloth.FoldDepth is { } depth && depth * 2 >= cloth.UsableWidth)
            context.Error(name, path + ".fold_depth", JobFaults.FoldTooDeep(Shown(cloth.UsableWidth / 2)));
        else if (cloth.Width < Length.FromCentimeters(25) || cloth.Width > Length.FromMeters(5))
            context.Note(name, path + ".width", JobFaults.UnusualWidth(Shown(cloth.Width)));
    }

    private static string Shown(Length length) => length.TotalCentimeters.ToString("0.##", CultureInfo.InvariantCulture) + " cm";
}
