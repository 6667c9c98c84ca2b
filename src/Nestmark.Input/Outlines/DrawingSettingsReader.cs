using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Pdf;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;

namespace Nestmark.Input.Outlines;

/// <summary>Reads the key drawings: scale, test square, tiles and lines of each drawing.</summary>
internal static class DrawingSettingsReader
{
    /// <summary>Largest and smallest correction of a drawing's size.</summary>
    private const decimal LargestPercent = 10_000;

    private static readonly (string, double?)[] UnitWords = [("mm", 1), ("cm", 10), ("m", 1000), ("in", 25.4), ("ft", 304.8)];

    /// <summary>The settings by file.</summary>
    public static ImmutableDictionary<string, DrawingSettings> Read(MapReader job, JobContext context)
    {
        ImmutableDictionary<string, DrawingSettings> none = ImmutableDictionary<string, DrawingSettings>.Empty.WithComparers(StringComparer.Ordinal);
        if (job.Find("drawings") is not MapEntry entry || context.AsMap(entry.Value, "drawings") is not MapReader drawings)
            return none;
        foreach (MapEntry drawing in drawings.Map.Entries)
        {
            if (One(drawing, context) is DrawingSettings settings)
                none = none.SetItem(settings.File, settings);
        }
        return none;
    }

    private static DrawingSettings? One(MapEntry entry, JobContext context)
    {
        string file = entry.Key.Text;
        string path = "drawings." + file;
        if (DrawingReaders.For(file) is null)
            context.Error(entry.Key, path, JobFaults.OutlineFormat(file, [.. DrawingReaders.All.Select(reader => reader.Format)]));
        if (context.AsMap(entry.Value, path) is not MapReader reader)
            return null;
        DrawingSettings settings = new(file, context) { Node = entry.Key };
        settings = reader.Read("scale", text => Scale(text, settings), settings);
        if (file.EndsWith(".dxf", StringComparison.OrdinalIgnoreCase))
            settings = settings with { UnitMillimeters = reader.ReadWord("unit", UnitWords, null) };
        else
            settings = TestSquare(reader, settings);
        if (file.EndsWith(".pdf", StringComparison.OrdinalIgnoreCase))
            settings = settings with { Tiles = Tiles(reader, context), Select = Select(reader, context) };
        reader.RefuseTheRest();
        return settings;
    }

    private static Reading<DrawingSettings> Scale(string text, DrawingSettings settings)
    {
        Reading<ScannedNumber> number = NumberScanner.Scan(text);
        if (number.Value is not ScannedNumber scanned)
            return new(null, number.Fault);
        return scanned switch
        {
            { Rest: "%", Value: >= 1 and <= LargestPercent } => new(settings with { ScaleRatio = (double)(scanned.Value / 100) }, null),
            { Rest: "dpi", Value: >= 1 and <= LargestPercent } => new(settings with { UnitsPerInchRatio = (double)scanned.Value }, null),
            _ => new(null, ScaleFaults.ScaleForm(text)),
        };
    }

    private static DrawingSettings TestSquare(MapReader reader, DrawingSettings settings)
    {
        if (reader.Find("test_square")?.Value is not MapNode map)
            return settings with { TestSquareSide = reader.Read<Length?>("test_square", Side, null) };
        MapReader square = new(map, reader.PathOf("test_square"), settings.Context);
        if (square.Find("side") is null)
            settings.Context.Error(map, square.Path, JobFaults.MissingKey("side", "side: 5 cm with the true side of the square"));
        DrawingSettings read = settings with { TestSquareSide = square.Read<Length?>("side", Side, null), TestSquareId = square.FindText("id")?.Text ?? "" };
        square.RefuseTheRest();
        return read;

        Reading<Length?> Side(string text)
        {
            Reading<Length> length = settings.Context.AboveZero(text);
            return new(length.Value, length.Fault);
        }
    }

    private static PdfTiles? Tiles(MapReader reader, JobContext context)
    {
        if (reader.Find("tiles") is not MapEntry entry || context.AsMap(entry.Value, reader.PathOf("tiles")) is not MapReader tiles)
            return null;
        Length trim = tiles.Read("trim", context.ZeroOrMore, Length.Zero);
        Length overlap = tiles.Read("overlap", context.ZeroOrMore, Length.Zero);
        ImmutableArray<ImmutableArray<int>> pages = Pages(tiles, entry.Key, context);
        tiles.RefuseTheRest();
        return pages.IsEmpty ? null : new PdfTiles(pages, trim, overlap);
    }

    private static ImmutableArray<ImmutableArray<int>> Pages(MapReader tiles, JobNode at, JobContext context)
    {
        if (tiles.Find("pages")?.Value is not ListNode { Items.Length: > 0 } rows)
        {
            context.Error(tiles.Find("pages")?.Value ?? at, tiles.PathOf("pages"), ScaleFaults.PagesForm());
            return [];
        }
        List<ImmutableArray<int>> grid = [];
        foreach (JobNode row in rows.Items)
        {
            int[] numbers = row is ListNode list
                ? [.. list.Items.Select(item => item is TextNode text && int.TryParse(text.Text, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out int page) && page <= PdfLimits.MostPages ? page : -1)]
                : [-1];
            if (numbers.Length == 0 || numbers.Contains(-1))
            {
                context.Error(row, tiles.PathOf("pages"), ScaleFaults.PagesForm());
                return [];
            }
            grid.Add([.. numbers]);
        }
        int[] twice = [.. grid.SelectMany(row => row).Where(page => page > 0).GroupBy(page => page).Where(group => group.Count() > 1).Select(group => group.Key)];
        bool isEmpty = grid.TrueForAll(row => row.All(page => page == 0));
        if (twice.Length == 0 && !isEmpty)
            return [.. grid];
        context.Error(rows, tiles.PathOf("pages"), isEmpty ? ScaleFaults.PagesForm() : ScaleFaults.PageTwice(twice[0]));
        return [];
    }

    private static PdfSelection Select(MapReader reader, JobContext context)
    {
        if (reader.Find("select") is not MapEntry entry || context.AsMap(entry.Value, reader.PathOf("select")) is not MapReader select)
            return PdfSelection.Everything;
        PdfSelection selection = new(Wanted(select, "layer", context), Wanted(select, "color", context), Wanted(select, "dash", context));
        select.RefuseTheRest();
        return selection;
    }

    /// <summary>One text for all sizes, or a text for each.</summary>
    private static PdfWanted? Wanted(MapReader select, string key, JobContext context)
    {
        if (select.Find(key) is not MapEntry entry)
            return null;
        if (entry.Value is not MapNode map)
            return context.AsText(entry.Value, select.PathOf(key)) is TextNode text ? new PdfWanted(text.Text, []) : null;
        List<(string, string)> bySize = [];
        foreach (MapEntry size in map.Entries)
        {
            if (context.AsText(size.Value, select.PathOf(key) + "." + size.Key.Text) is TextNode wanted)
                bySize.Add((size.Key.Text, wanted.Text));
        }
        return new PdfWanted("", [.. bySize]);
    }
}
