using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Guide;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>The first pages of the piece sheet: all pieces in a table, and everything that was noticed in reading them.</summary>
internal static class PieceListPages
{
    private const double Margin = 10;
    private const double TextSize = 8 * 25.4 / 72;

    private static readonly ImmutableArray<TableColumn> Columns =
    [
        new("", "Piece", 0.24, Anchor.Start), new("", "Size", 0.07, Anchor.Start), new("", "Cut", 0.13, Anchor.Start), new("", "Cloth", 0.14, Anchor.Start),
        new("Cutting line", "along", 0.1, Anchor.End), new("Cutting line", "across", 0.1, Anchor.End), new("", "area", 0.13, Anchor.End), new("", "altered", 0.09, Anchor.End),
    ];

    /// <summary>The paper of piece sheets: A4, or US letter for jobs in inches.</summary>
    public static Paper PaperOf(Job job) => job.System == MeasureSystem.Metric ? Paper.A4 : Paper.Letter;

    /// <summary>One page or more.</summary>
    public static IEnumerable<PdfSheet> Of(Job job, IReadOnlyList<Problem> problems)
    {
        Paper paper = PaperOf(job);
        (double width, double height) = (paper.Width.TotalMillimeters, paper.Height!.Value.TotalMillimeters);
        Table table = new(Columns, [.. job.Pieces.Select(piece => RowOf(piece, job.System))]);
        FlowingText notes = new(width - 2 * Margin, TextSize);
        notes.Add("What was noticed", problems.Select(problem => NoteWords.Of(job, problem)).Distinct());
        do
        {
            Drawing page = new();
            double top = DrawHeader(page, job, height - Margin, width - 2 * Margin);
            if (!table.Rows.IsEmpty)
            {
                int count = Table.RowsWithin(top - Margin, TextSize);
                top = (table with { Rows = [.. table.Rows.Take(count)] }).Draw(page, new Spot(Margin, top), width - 2 * Margin, TextSize) - 4;
                table = table with { Rows = [.. table.Rows.Skip(count)] };
            }
            if (table.Rows.IsEmpty && !notes.IsEmpty && top > Margin + 20)
                notes.DrawPage(page, new Spot(Margin, top), Margin);
            yield return new PdfSheet("All pieces", width, height, page);
        }
        while (!table.Rows.IsEmpty || !notes.IsEmpty);
    }

    private static ImmutableArray<string> RowOf(JobPiece piece, MeasureSystem system)
    {
        Box box = piece.Piece.CuttingLine.Bounds;
        return
        [
            piece.Piece.Name, piece.Piece.Size, PieceWords.Cut(piece.Piece)["cut ".Length..], piece.Cloth,
            LengthWords.Tape(Length.FromMicrometers(box.Width), system), LengthWords.Tape(Length.FromMicrometers(box.Height), system),
            AreaWords.Of(piece.Piece.CuttingLine.AreaSquareMillimeters, system), piece.Before is null ? "" : "yes",
        ];
    }

    private static double DrawHeader(Drawing page, Job job, double top, double width)
    {
        page.Text(Role.Label, FittedText.Cut(job.Title, 6, FontWeight.Bold, width), new Spot(Margin, top - 6), 6, Anchor.Start, FontWeight.Bold);
        string sizes = string.Join(", ", job.Sizes.Where(size => size.Size.Length > 0).Select(size => size.Size));
        string line = PieceWords.Joined("Piece sheet", job.Source, sizes.Length > 0 ? "sizes " + sizes : "", "halves as drawn; areas of the cutting line");
        page.Text(Role.Label, FittedText.Cut(line, TextSize, FontWeight.Regular, width), new Spot(Margin, top - 11), TextSize);
        return top - 14;
    }
}
