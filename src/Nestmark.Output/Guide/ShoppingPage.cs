using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Yardage;

namespace Nestmark.Output.Guide;

/// <summary>The first page of a guide for several cloths: what to buy, what it costs, and what is cut from each.</summary>
internal static class ShoppingPage
{
    private const double Margin = 12;
    private const double Size = 3;
    private const double Between = 5;

    /// <summary>The page; more than one only when the lists are too long for it.</summary>
    public static IEnumerable<PdfSheet> For(Plan plan)
    {
        Paper paper = plan.Job.System == MeasureSystem.Metric ? Paper.A4 : Paper.Letter;
        double width = paper.Width.TotalMillimeters;
        double height = paper.Height!.Value.TotalMillimeters;
        FlowingText text = new(width - 2 * Margin, Size);
        foreach (ClothPlan cloth in plan.Cloths)
            text.Add(cloth.Cloth.Name, [CutFrom(cloth), .. GuideWords.NotPlaced(cloth).Select(reason => "not placed: " + reason)]);
        bool isFirst = true;
        do
        {
            Drawing page = new();
            TextColumn column = new(page, Margin, height - Margin, width - 2 * Margin);
            column.Write(FittedText.Cut(plan.Job.Title, 5, FontWeight.Bold, width - 2 * Margin), 5, FontWeight.Bold);
            column.Write("Shopping list", Size * 1.4, FontWeight.Bold);
            double y = column.YMillimeters;
            if (isFirst)
                y = DrawList(page, plan, y, width - 2 * Margin);
            text.DrawPage(page, new Spot(Margin, y - Between), Margin);
            isFirst = false;
            yield return new PdfSheet("Shopping list", width, height, page);
        }
        while (!text.IsEmpty);
    }

    private static double DrawList(Drawing page, Plan plan, double top, double width)
    {
        ShoppingList list = ShoppingList.Of(plan);
        ImmutableArray<TableColumn> columns =
        [
            new("", "Cloth", 0.2, Anchor.Start), new("", "Width", 0.22, Anchor.Start), new("", "Spread", 0.26, Anchor.Start),
            new("", "Buy", 0.1, Anchor.End), new("", "or", 0.1, Anchor.End),
            new("", "Cost", 0.12, Anchor.End),
        ];
        Table table = new(columns, [.. list.Lines.Select(line => Row(line, plan.Job.System))]);
        double y = table.Draw(page, new Spot(Margin, top), width, Size);
        TextColumn column = new(page, Margin, y - 1, width);
        column.Write(list.TotalText, Size * 1.1, FontWeight.Bold);
        return column.YMillimeters;
    }

    private static ImmutableArray<string> Row(ClothPlan line, MeasureSystem system) =>
    [
        line.Cloth.Name, LengthWords.TapeInBoth(line.Cloth.Width, system), LayWords.Of(line.Marker.Surface.Form), line.Purchase.Text, line.Purchase.OtherText,
        line.Purchase.Cost is decimal cost ? string.Create(CultureInfo.InvariantCulture, $"{cost:0.00} {line.Purchase.Currency}").TrimEnd() : "",
    ];

    private static string CutFrom(ClothPlan cloth) => cloth.Marker.Placements.IsEmpty
        ? "nothing is cut from it"
        : string.Join("; ", cloth.Marker.Placements.Select(placement => $"{placement.Piece.Name}, {PieceWords.Cut(placement.Piece)}").Distinct());
}
