using System.Collections.Immutable;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Output.Words;
using Nestmark.Yardage;
using Nestmark.Yardage.Saving;

namespace Nestmark.Output.Guide;

/// <summary>The page that shows one cloth's lay, with measures, cut list and cloth to buy.</summary>
internal sealed class GuideSheet
{
    private const double Margin = 10;
    private const double Between = 3;
    private const int MostLettersOnPage = 4000;
    private const string NotPlacedHeading = "Not placed";
    private const string NotesHeading = "Notes";
    private const string SavingsHeading = "Ways to save";
    private const double PointMillimeters = 25.4 / 72;

    // A lay drawn lower than this cannot be read; the table and the cut list then go to pages of their own.
    private const double LeastLayHeight = 45;

    private static readonly double[] SizesInPoints = [8, 7.5, 7, 6.5, 6];

    private readonly Plan _plan;
    private readonly ClothPlan _cloth;
    private readonly Table _table;
    private readonly Arrangement _arrangement;

    private GuideSheet(Plan plan, ClothPlan cloth)
    {
        _plan = plan;
        _cloth = cloth;
        _table = PlaceTable.Of(cloth, plan.Job.System);
        _arrangement = BestOf(
        [
            .. from layout in Enum.GetValues<GuideLayout>()
               from points in SizesInPoints
               from table in (bool[])[true, false]
               from notes in HasRoomForNotes(plan, cloth) ? (bool[])[true, false] : [false]
               select ArrangementFor(layout, points * PointMillimeters, table, notes),
        ]);
    }

    // More letters than a page holds beside a lay need not be tried in every arrangement.
    private static bool HasRoomForNotes(Plan plan, ClothPlan cloth) =>
        GuideWords.NotPlaced(cloth).Concat(GuideWords.Notes(plan, cloth)).Concat(SavingWords.Of(plan, cloth)).Sum(sentence => sentence.Length) <= MostLettersOnPage;

    private sealed record Arrangement(GuideLayout Layout, double Size, bool TableOnPage, bool NotesOnPage, double Scale, double LayHeight);

    private double PageWidth => WidthOf(_arrangement.Layout);

    private double PageHeight => HeightOf(_arrangement.Layout);

    /// <summary>The page of a cloth; more than one only when notes or table are too long for it.</summary>
    public static IEnumerable<PdfSheet> For(Plan plan, ClothPlan cloth)
    {
        GuideSheet sheet = new(plan, cloth);
        yield return sheet.FirstPage();
        if (!sheet._arrangement.NotesOnPage)
            foreach (PdfSheet more in sheet.NotesPages())
                yield return more;
        if (!sheet._arrangement.TableOnPage)
            foreach (PdfSheet more in sheet.TablePages())
                yield return more;
    }

    // Rather all on one page; else first the notes, then the table go behind it.
    private Arrangement BestOf(Arrangement[] all)
    {
        double least = _cloth.Marker.Placements.IsEmpty ? 1 : LeastLayHeightFor();
        foreach ((bool table, bool notes) in ((bool, bool)[])[(true, true), (true, false), (false, true)])
        {
            Arrangement[] readable = [.. all.Where(one => one.TableOnPage == table && one.NotesOnPage == notes && one.LayHeight >= least)];
            if (readable.Length > 0)
                return readable.MaxBy(one => one.Scale * one.Size)!;
        }
        return all.Where(one => !one.TableOnPage && !one.NotesOnPage).MaxBy(one => one.Scale * one.Size)!;
    }

    private PdfSheet FirstPage()
    {
        Drawing page = new();
        double size = _arrangement.Size;
        double top = DrawHeader(page, PageHeight - Margin, PageWidth - 2 * Margin, size);
        if (_cloth.Marker.Placements.IsEmpty)
            return EmptyPage(page, top, size);
        double layWidth = LayWidthOf(_arrangement.Layout);
        double below = LayView.Draw(page, _cloth, new Spot(Margin, top), _arrangement.Scale, _plan.Job.System);
        below = Legend.Draw(page, _cloth, new Spot(Margin, below), layWidth) - Between;
        if (_arrangement.Layout == GuideLayout.SideBySide)
        {
            double left = Margin + layWidth + 2 * Between;
            double width = PageWidth - Margin - left;
            double y = _arrangement.TableOnPage ? DrawTable(page, new Spot(left, top), width, size) : top;
            DrawNotes(page, new Spot(left, y), width, _arrangement);
        }
        else
        {
            double width = PageWidth - 2 * Margin;
            double y = _arrangement.TableOnPage ? DrawTable(page, new Spot(Margin, below), width, size) : below;
            DrawNotes(page, new Spot(Margin, y), width, _arrangement);
        }
        return new PdfSheet(_cloth.Cloth.Name, PageWidth, PageHeight, page);
    }

    private PdfSheet EmptyPage(Drawing page, double top, double size)
    {
        TextColumn column = new(page, Margin, top, PageWidth - 2 * Margin);
        column.Write("No piece found a place on this cloth.", size * 1.3);
        DrawNotes(page, new Spot(Margin, column.YMillimeters - Between), PageWidth - 2 * Margin, _arrangement);
        return new PdfSheet(_cloth.Cloth.Name, PageWidth, PageHeight, page);
    }

    private IEnumerable<PdfSheet> TablePages() =>
        PagesOf(_table, PlaceTable.Explanation(_cloth, _plan.Job.System)).Concat(PagesOf(GuideWords.CutTable(_cloth), ""));

    private IEnumerable<PdfSheet> NotesPages()
    {
        double width = PageWidth - 2 * Margin;
        FlowingText text = new(width, SizesInPoints[0] * PointMillimeters);
        text.Add(NotPlacedHeading, GuideWords.NotPlaced(_cloth));
        text.Add(NotesHeading, GuideWords.Notes(_plan, _cloth));
        text.Add(SavingsHeading, SavingWords.Of(_plan, _cloth));
        while (!text.IsEmpty)
        {
            Drawing page = new();
            double top = DrawHeader(page, PageHeight - Margin, width, SizesInPoints[0] * PointMillimeters);
            text.DrawPage(page, new Spot(Margin, top), Margin);
            yield return new PdfSheet(_cloth.Cloth.Name + ", notes", PageWidth, PageHeight, page);
        }
    }

    private IEnumerable<PdfSheet> PagesOf(Table table, string explanation)
    {
        double size = 7.5 * PointMillimeters;
        double height = PageHeight - 2 * Margin - HeaderHeight(PageWidth - 2 * Margin, size) - 12;
        int perPage = Table.RowsWithin(height, size);
        for (int first = 0; first < table.Rows.Length; first += perPage)
        {
            Drawing page = new();
            double top = DrawHeader(page, PageHeight - Margin, PageWidth - 2 * Margin, size);
            Table part = table with { Rows = [.. table.Rows.Skip(first).Take(perPage)] };
            double y = part.Draw(page, new Spot(Margin, top), PageWidth - 2 * Margin, size);
            new TextColumn(page, Margin, y - 1, PageWidth - 2 * Margin).Write(explanation, size);
            yield return new PdfSheet(_cloth.Cloth.Name + ", measures", PageWidth, PageHeight, page);
        }
    }

    private Arrangement ArrangementFor(GuideLayout layout, double size, bool tableOnPage, bool notesOnPage)
    {
        Arrangement draft = new(layout, size, tableOnPage, notesOnPage, 0, 0);
        double width = WidthOf(layout) - 2 * Margin;
        double height = HeightOf(layout) - 2 * Margin - HeaderHeight(width, size);
        double layWidth = LayWidthOf(layout);
        double legend = -Legend.Draw(new Drawing(), _cloth, default, layWidth) + Between;
        double beside = layout == GuideLayout.SideBySide ? width - layWidth - 2 * Between : width;
        double table = tableOnPage ? TableHeight(beside, size) : 0;
        double text = table - DrawNotes(new Drawing(), default, beside, draft);
        double room = layout == GuideLayout.SideBySide ? (text <= height ? height - legend : 0) : height - legend - text;
        double scale = LayView.ScaleFor(_cloth, layWidth, room);
        return draft with { Scale = scale, LayHeight = scale * ClothFrame.Of(_cloth).HeightMillimeters };
    }

    // A long narrow lay is low on any paper: then as high as the wider paper allows, less a third.
    private double LeastLayHeightFor()
    {
        double scale = LayView.ScaleFor(_cloth, WidthOf(GuideLayout.Across) - 2 * Margin, 1e6);
        return Math.Min(LeastLayHeight, scale * ClothFrame.Of(_cloth).HeightMillimeters * 0.67);
    }

    private double DrawHeader(Drawing page, double top, double width, double size)
    {
        TextColumn column = new(page, Margin, top, width);
        string buy = _cloth.Leftovers is not null ? "From leftovers"
            : GuideWords.Headline(_cloth.Purchase) + (_cloth.Marker.Unplaced.IsEmpty ? "" : " for what is placed");
        double buyWidth = new TextLine(buy, 5, FontWeight.Bold).WidthMillimeters;
        page.Text(Role.Label, buy, new Spot(Margin + width, top - 5), 5, Anchor.End, FontWeight.Bold);
        column.Write(FittedText.Cut(_plan.Job.Title, 5, FontWeight.Bold, width - buyWidth - 5), 5, FontWeight.Bold);
        column.Write(GuideWords.ClothLine(_cloth, _plan.Job.System), size * 1.1);
        return column.YMillimeters - 1.5;
    }

    private double HeaderHeight(double width, double size) => -DrawHeader(new Drawing(), 0, width, size);

    private double DrawTable(Drawing page, Spot topLeft, double width, double size)
    {
        double y = _table.Draw(page, topLeft, width, size);
        TextColumn column = new(page, topLeft.XMillimeters, y - 0.5, width);
        column.Write(PlaceTable.Explanation(_cloth, _plan.Job.System), size);
        return column.YMillimeters - Between;
    }

    private double TableHeight(double width, double size)
    {
        Table empty = _table with { Rows = [] };
        double frame = -empty.Draw(new Drawing(), default, width, size) - empty.HeightMillimeters(size);
        TextColumn column = new(new Drawing(), 0, -0.5, width);
        column.Write(PlaceTable.Explanation(_cloth, _plan.Job.System), size);
        return _table.HeightMillimeters(size) + frame - column.YMillimeters + Between;
    }

    private double DrawNotes(Drawing page, Spot topLeft, double width, Arrangement arrangement)
    {
        double size = arrangement.Size;
        double half = (width - 2 * Between) / 2;
        TextColumn left = new(page, topLeft.XMillimeters, topLeft.YMillimeters, half);
        WriteList(left, "Cloth to buy", GuideWords.BuyingSteps(_cloth, _plan.Job.System), size);
        if (arrangement.TableOnPage)
            WriteList(left, "Cut list", GuideWords.CutList(_cloth), size);
        TextColumn right = new(page, topLeft.XMillimeters + half + 2 * Between, topLeft.YMillimeters, half);
        WriteList(right, NotPlacedHeading, Shortened(GuideWords.NotPlaced(_cloth), arrangement), size);
        WriteList(right, NotesHeading, Shortened(GuideWords.Notes(_plan, _cloth), arrangement), size);
        WriteList(right, SavingsHeading, Shortened(SavingWords.Of(_plan, _cloth), arrangement), size);
        WriteList(right, "Before you cut", Cautions.ForCutting, size);
        if (LetterNote.For(_plan) is { Length: > 0 } note)
            right.Write(note, size);
        return Math.Min(left.YMillimeters, right.YMillimeters);
    }

    private static ImmutableArray<string> Shortened(IEnumerable<string> sentences, Arrangement arrangement)
    {
        ImmutableArray<string> all = [.. sentences];
        return arrangement.NotesOnPage || all.IsEmpty
            ? all
            : [string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{all.Length} in all: see the next page.")];
    }

    private static void WriteList(TextColumn column, string heading, IEnumerable<string> points, double size)
    {
        ImmutableArray<string> lines = [.. points];
        if (lines.IsEmpty)
            return;
        column.Write(heading, size * 1.15, FontWeight.Bold);
        foreach (string line in lines)
            column.WritePoint(line, size);
        column.Skip(size * 0.8);
    }

    private double WidthOf(GuideLayout layout) => layout == GuideLayout.Upright ? Sheet.Width.TotalMillimeters : Sheet.Height!.Value.TotalMillimeters;

    private double HeightOf(GuideLayout layout) => layout == GuideLayout.Upright ? Sheet.Height!.Value.TotalMillimeters : Sheet.Width.TotalMillimeters;

    private double LayWidthOf(GuideLayout layout)
    {
        double width = WidthOf(layout) - 2 * Margin;
        return layout == GuideLayout.SideBySide ? width * 0.42 : width;
    }

    private Paper Sheet => _plan.Job.System == MeasureSystem.Metric ? Paper.A4 : Paper.Letter;
}
