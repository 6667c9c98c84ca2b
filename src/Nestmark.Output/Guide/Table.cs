using System.Collections.Immutable;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Guide;

/// <summary>A plain table: headings, then one line a row.</summary>
/// <param name="Columns">From the left.</param>
/// <param name="Rows">As many texts in each as there are columns.</param>
internal sealed record Table(ImmutableArray<TableColumn> Columns, ImmutableArray<ImmutableArray<string>> Rows)
{
    private const double RowRatio = 1.45;
    private static readonly Ink HeadLine = new(0.25);
    private static readonly Ink RowLine = new(0.1, LineStyle.Solid, 0.6);

    /// <summary>Height of headings and rows at a font size.</summary>
    public double HeightMillimeters(double sizeMillimeters) => (Rows.Length + 2.2) * sizeMillimeters * RowRatio;

    /// <summary>How many rows a height has room for.</summary>
    public static int RowsWithin(double heightMillimeters, double sizeMillimeters) =>
        Math.Max(1, (int)(heightMillimeters / (sizeMillimeters * RowRatio) - 2.2));

    /// <summary>Draws it.</summary>
    /// <returns>Where it ends, counted up the page.</returns>
    public double Draw(Drawing page, Spot topLeft, double widthMillimeters, double sizeMillimeters)
    {
        double rowHeight = sizeMillimeters * RowRatio;
        double y = topLeft.YMillimeters - rowHeight;
        DrawGroups(page, topLeft.XMillimeters, y, widthMillimeters, sizeMillimeters);
        y -= rowHeight;
        DrawRow(page, [.. Columns.Select(column => column.Heading)], new Spot(topLeft.XMillimeters, y), widthMillimeters, sizeMillimeters, FontWeight.Bold);
        y -= rowHeight * 0.2;
        page.Line(Role.Frame, HeadLine, new Spot(topLeft.XMillimeters, y - sizeMillimeters * 0.15), new Spot(topLeft.XMillimeters + widthMillimeters, y - sizeMillimeters * 0.15));
        foreach (ImmutableArray<string> row in Rows)
        {
            y -= rowHeight;
            DrawRow(page, row, new Spot(topLeft.XMillimeters, y), widthMillimeters, sizeMillimeters, FontWeight.Regular);
            double line = y - sizeMillimeters * 0.35;
            page.Line(Role.Frame, RowLine, new Spot(topLeft.XMillimeters, line), new Spot(topLeft.XMillimeters + widthMillimeters, line));
        }
        return y - sizeMillimeters * 0.5;
    }

    private void DrawGroups(Drawing page, double left, double y, double width, double size)
    {
        double x = left;
        for (int i = 0; i < Columns.Length;)
        {
            int end = i;
            double share = 0;
            while (end < Columns.Length && Columns[end].Group == Columns[i].Group)
                share += Columns[end++].ShareRatio * width;
            if (Columns[i].Group.Length > 0)
            {
                page.Text(Role.Label, FittedText.Cut(Columns[i].Group, size, FontWeight.Bold, share - size), new Spot(x + share, y), size, Anchor.End, FontWeight.Bold);
                page.Line(Role.Frame, RowLine, new Spot(x + size, y - size * 0.35), new Spot(x + share, y - size * 0.35));
            }
            x += share;
            i = end;
        }
    }

    private void DrawRow(Drawing page, ImmutableArray<string> texts, Spot baseLine, double width, double size, FontWeight weight)
    {
        double x = baseLine.XMillimeters;
        for (int i = 0; i < Columns.Length; i++)
        {
            double share = Columns[i].ShareRatio * width;
            string text = FittedText.Cut(texts[i], size, weight, share - size * 0.4);
            double at = Columns[i].Anchor == Anchor.End ? x + share : x;
            page.Text(Role.Label, text, new Spot(at, baseLine.YMillimeters), size, Columns[i].Anchor, weight);
            x += share;
        }
    }
}
