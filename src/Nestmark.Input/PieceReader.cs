using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Nestmark.Geometry;
using Nestmark.Input.Drafting;
using Nestmark.Input.Outlines;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>Reads the key pieces.</summary>
/// <remarks>Default seam allowance 1.5 cm, or 5/8 in where units are in; point limit 2.5 allowances (references/trade.md 13, 3.3).</remarks>
internal sealed class PieceReader(JobContext context, OutlineLibrary outlines, ImmutableArray<SizeCount> sizes, Length defaultSeam)
{
    private const double DefaultPointLimit = 2.5;
    private const string SizePart = "{size}";
    private static readonly string[] ShapeKeys = ["outline", "rectangle", "polygon", "circle", .. RecipeReader.Keys];

    internal static readonly (string, AllowanceEnds)[] EndsWords =
        [("mitred", AllowanceEnds.Mitred), ("squared", AllowanceEnds.Squared), ("reflected", AllowanceEnds.Reflected)];

    internal static readonly (string, GrainRule)[] GrainWords =
        [("along", GrainRule.Along), ("across", GrainRule.Across), ("bias", GrainRule.Bias), ("any", GrainRule.Any)];

    private static readonly (string, DirectionRule)[] DirectionWords =
        [("as cloth", DirectionRule.AsCloth), ("either way", DirectionRule.EitherWay), ("one way", DirectionRule.OneWay)];

    private static readonly (string, StretchRule)[] StretchWords =
        [("any", StretchRule.AnyWay), ("across", StretchRule.AcrossGrain), ("along", StretchRule.AlongGrain)];

    private static readonly (string, FlawTolerance)[] FlawWords =
        [("nowhere", FlawTolerance.Nowhere), ("allowances", FlawTolerance.Allowances), ("anywhere", FlawTolerance.Anywhere)];

    private static readonly (string, OutlineMeaning)[] LineWords = [("seam", OutlineMeaning.SeamLine), ("cut", OutlineMeaning.CuttingLine)];

    private static readonly Regex EdgeName = new(@"^\s*([A-Z]{1,2})\s*-\s*([A-Z]{1,2})\s*$", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    private static readonly Regex Braces = new(@"\{[^}]*\}", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    /// <summary>The pieces in the order of the file, those with sizes by size.</summary>
    public ImmutableArray<DraftedPiece> Read(MapReader pieces)
    {
        if (pieces.Map.Entries.IsEmpty)
            context.Error(pieces.Map, "pieces", JobFaults.NoPieces());
        return [.. pieces.Map.Entries.SelectMany(One)];
    }

    private IEnumerable<DraftedPiece> One(MapEntry entry)
    {
        string path = "pieces." + entry.Key.Text;
        if (!JobNames.IsGood(entry.Key.Text))
            context.Error(entry.Key, path, JobFaults.BadName(entry.Key.Text));
        if (context.AsMap(entry.Value, path) is not MapReader reader)
            return [];
        MapEntry? shape = Shape(reader, entry.Key);
        bool isDrafted = shape is not null && RecipeReader.Keys.Contains(shape.Key.Text);
        ImmutableArray<ClothCut> cuts = new ClothCutReader(context, this).Read(reader, entry.Key, Pattern(reader, entry.Key.Text), isDrafted ? CutNeed.FromShape : CutNeed.Required);
        ImmutableArray<string> cutIn = PieceSizes.Read(reader, sizes);
        Func<PieceDraft, string> foldEdge = FoldEdge(reader, shape?.Key.Text);
        reader.RefuseTheRest();
        if (shape is null)
            return [];
        OutlineMeaning? line = reader.Find("line") is null ? null : cuts[0].Pattern.Meaning;
        return cuts.SelectMany(OfCloth).ToArray();

        IEnumerable<DraftedPiece> OfCloth(ClothCut cut)
        {
            PieceKeys keys = new(entry.Key, path, reader.Map, shape) { Cloth = cut };
            PieceDraft pattern = cut.Pattern with { FoldEdge = foldEdge(cut.Pattern) };
            string item = path + "." + shape.Key.Text;
            return isDrafted
                ? Drafted(pattern, cut, keys, item)
                : from drawn in Drawn(shape, item, new PieceWish("", "", line, cut.Pattern.Cut))
                  from size in PieceSizes.Of(drawn.Size, cutIn)
                  select new DraftedPiece(With(pattern, size, drawn.Piece), cut.Cloth, keys, drawn.Piece.DrawnAt);
        }
    }

    /// <summary>A piece that is drafted later, once the pieces that it is measured along are made.</summary>
    private IEnumerable<DraftedPiece> Drafted(PieceDraft pattern, ClothCut cut, PieceKeys keys, string item)
    {
        bool saysCut = keys.Map.Entries.Concat(cut.Own?.Map.Entries ?? []).Any(entry => entry.Key.Text == "cut");
        return RecipeReader.Read(keys.Shape, item, saysCut ? pattern.Cut : null, context) is Recipe recipe
            ? [new DraftedPiece(pattern, cut.Cloth, keys, "") { Recipe = recipe }]
            : [];
    }

    private MapEntry? Shape(MapReader reader, TextNode name)
    {
        MapEntry[] shapes = [.. ShapeKeys.Select(reader.Find).OfType<MapEntry>()];
        if (shapes.Length == 0)
            context.Error(name, reader.Path, JobFaults.NoShape());
        if (shapes.Length > 1)
            context.Error(shapes[1].Key, reader.PathOf(shapes[1].Key.Text), JobFaults.SeveralShapes(shapes[0].Key.Text, shapes[1].Key.Text));
        return shapes.Length == 1 ? shapes[0] : null;
    }

    /// <summary>The fold edge by its letters: as named, or the lower edge of a half that is a rectangle.</summary>
    private static Func<PieceDraft, string> FoldEdge(MapReader reader, string? shape)
    {
        string named = reader.Read("fold", ReadEdge, "");
        return draft => named.Length == 0 && shape == "rectangle" && draft.Cut.Kind == CutKind.OnFold ? "A-B" : named;
    }

    /// <summary>Everything but the shape and the fold edge.</summary>
    private PieceDraft Pattern(MapReader reader, string name)
    {
        AllowanceEnds ends = reader.ReadWord("ends", EndsWords, AllowanceEnds.Mitred);
        return new PieceDraft
        {
            Name = name,
            Size = "",
            Outline = [],
            Meaning = reader.ReadWord("line", LineWords, OutlineMeaning.SeamLine),
            Cut = reader.Read("cut", CutText.Read, new CutQuantity(1, CutKind.Copies)),
            Seam = reader.Read("seam", context.ZeroOrMore, defaultSeam),
            Edges = Edges(reader, ends),
            PointLimitRatio = reader.Read("point_limit", RatioText.PointLimit, DefaultPointLimit),
            Grainline = null,
            FoldLine = null,
            FoldEdge = "",
            Notches = [],
            Lines = [],
            Marks = [],
            Grain = reader.ReadWord("grain", GrainWords, GrainRule.Along),
            Tilt = reader.Read<Angle?>("tilt", ReadTilt, null),
            Direction = reader.ReadWord("direction", DirectionWords, DirectionRule.AsCloth),
            Stretch = reader.ReadWord("stretch", StretchWords, StretchRule.AnyWay),
            PiecedAllowance = reader.Read<Length?>("pieced", ReadPieced, null),
            Flaws = reader.ReadWord("flaws", FlawWords, FlawTolerance.Nowhere),
            Least = LeastReader.Read(reader, context),
        };
    }

    private static PieceDraft With(PieceDraft pattern, string size, DrawnPiece drawn) => pattern with
    {
        Size = size,
        Outline = drawn.Outline,
        Meaning = drawn.Meaning ?? pattern.Meaning,
        Grainline = drawn.Grainline,
        FoldLine = drawn.FoldLine,
        Notches = drawn.Notches,
        Lines = drawn.Lines,
        Marks = drawn.Marks,
    };

    /// <summary>The key edges of a map; none without it.</summary>
    internal ImmutableArray<EdgeAllowance> Edges(MapReader reader, AllowanceEnds pieceEnds)
    {
        if (reader.Find("edges") is not MapEntry entry || entry.Value is BrokenNode)
            return [];
        if (entry.Value is not MapNode edges)
        {
            context.Error(entry.Value, reader.PathOf("edges"), JobFaults.EdgesForm());
            return [];
        }
        return [.. edges.Entries.Select(edge => Edge(edge, reader.PathOf("edges"), pieceEnds)).OfType<EdgeAllowance>()];
    }

    private EdgeAllowance? Edge(MapEntry entry, string path, AllowanceEnds pieceEnds)
    {
        Match name = EdgeName.Match(entry.Key.Text);
        if (!name.Success)
            context.Error(entry.Key, path, JobFaults.EdgeForm(entry.Key.Text));
        string item = path + "." + entry.Key.Text;
        MapReader reader = entry.Value is MapNode map
            ? new MapReader(map, item, context)
            : new MapReader(new MapNode([new MapEntry(new TextNode("width", entry.Key.Line, entry.Key.Column), entry.Value)], entry.Key.Line, entry.Key.Column), item, context);
        if (reader.Find("width") is null)
            context.Error(entry.Key, item, JobFaults.MissingKey("width", "width: 4 with the allowance of this edge"));
        Length width = reader.Read("width", context.ZeroOrMore, Length.Zero);
        AllowanceEnds ends = reader.ReadWord("ends", EndsWords, pieceEnds);
        reader.RefuseTheRest();
        return name.Success ? new EdgeAllowance(name.Groups[1].Value, name.Groups[2].Value, width, ends) : null;
    }

    internal static Reading<string> ReadEdge(string text)
    {
        Match match = EdgeName.Match(text);
        return match.Success ? new(match.Groups[1].Value + "-" + match.Groups[2].Value, null) : new(null, JobFaults.EdgeForm(text));
    }

    internal static Reading<Angle?> ReadTilt(string text)
    {
        Reading<Angle> angle = RatioText.Degrees(text);
        return new(angle.Value, angle.Fault);
    }

    private Reading<Length?> ReadPieced(string text)
    {
        Reading<Length> allowance = context.ZeroOrMore(text);
        return new(allowance.Value, allowance.Fault);
    }

    private List<(string Size, DrawnPiece Piece)> Drawn(MapEntry shape, string item, PieceWish wish)
    {
        if (shape.Key.Text == "outline")
            return Outlines(shape, item, wish);
        DrawnPiece? drawn = shape.Key.Text switch
        {
            "rectangle" => InlineShapes.Rectangle(shape, item, context),
            "polygon" => InlineShapes.OfPoints(shape, item, context),
            _ => InlineShapes.Circle(shape, item, context),
        };
        return drawn is null ? [] : [("", drawn)];
    }

    private List<(string Size, DrawnPiece Piece)> Outlines(MapEntry shape, string item, PieceWish wish)
    {
        List<(string, DrawnPiece)> drawn = [];
        if (context.AsText(shape.Value, item) is not TextNode text)
            return drawn;
        string unknown = Braces.Matches(text.Text).Select(match => match.Value).FirstOrDefault(braces => braces != SizePart) ?? "";
        bool hasSizes = text.Text.Contains(SizePart, StringComparison.Ordinal);
        if (unknown.Length > 0)
            context.Error(text, item, JobFaults.UnknownBraces(unknown));
        else if (hasSizes && sizes is [{ Size: "" }])
            context.Error(text, item, JobFaults.SizeWithoutSizes());
        else
        {
            bool isBySize = !hasSizes && outlines.SaysSizes(text.Text, text, item);
            foreach (string size in hasSizes || isBySize ? sizes.Select(count => count.Size) : [""])
            {
                string address = text.Text.Replace(SizePart, size, StringComparison.Ordinal);
                if (outlines.Find(wish with { Name = address, Size = isBySize ? size : "" }, text, item) is DrawnPiece piece)
                    drawn.Add((size, piece));
            }
        }
        return drawn;
    }
}
