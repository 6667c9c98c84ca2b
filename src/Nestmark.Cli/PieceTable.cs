using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;
using Spectre.Console;

namespace Nestmark.Cli;

/// <summary>The pieces of a job as a table.</summary>
internal static class PieceTable
{
    private const int LineColumns = 120;

    /// <summary>Writes one row a piece: cut, allowances, extent of the cutting line along and across the grain, cloth.</summary>
    public static void Write(TextWriter writer, Job job) => Write(
        writer, ["piece", "size", "cut", "cutting line, along x across", "seam allowance", "cloth"], job.Pieces.Select(piece => Cells(piece, job.System)));

    /// <summary>Writes a table of some columns.</summary>
    public static void Write(TextWriter writer, string[] headings, IEnumerable<string[]> rows)
    {
        Table table = new Table().Border(TableBorder.None);
        foreach (string heading in headings)
            table.AddColumn(new TableColumn(heading).Padding(0, 0, 2, 0));
        foreach (string[] row in rows)
            table.AddRow([.. row.Select(Markup.Escape)]);
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Width = LineColumns;
        console.Write(table);
    }

    private static string[] Cells(JobPiece piece, MeasureSystem system)
    {
        Box box = piece.Piece.CuttingLine.Bounds;
        string along = LengthWords.Tape(Length.FromMicrometers(box.Width), system);
        string across = LengthWords.Tape(Length.FromMicrometers(box.Height), system);
        return
        [
            piece.Piece.Name, piece.Piece.Size, piece.Piece.Cut.ToString(), $"{along} x {across}",
            Allowances(piece.Piece, system), piece.Cloth,
        ];
    }

    /// <summary>The commonest allowance first, then the edges that differ: "1.5 cm, A-B 4 cm, D-A fold".</summary>
    private static string Allowances(Piece piece, MeasureSystem system)
    {
        PieceEdge[] cut = [.. piece.Edges.Where(edge => edge.Kind == EdgeKind.Cut)];
        if (cut.Length == 0)
            return "";
        Length usual = cut.GroupBy(edge => edge.Allowance).MaxBy(group => group.Count())!.Key;
        IEnumerable<string> others = piece.Edges
            .Where(edge => edge.Kind == EdgeKind.Fold || edge.Allowance != usual)
            .Select(edge => edge.Kind == EdgeKind.Fold ? edge.Name + " fold" : $"{edge.Name} {LengthWords.Tape(edge.Allowance, system)}");
        return string.Join(", ", others.Prepend(LengthWords.Tape(usual, system)));
    }
}
