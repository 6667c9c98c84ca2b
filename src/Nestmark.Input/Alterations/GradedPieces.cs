using System.Collections.Immutable;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>Makes the sizes of pieces that have a grade table.</summary>
internal static class GradedPieces
{
    /// <summary>The pieces, those with a table once for each size.</summary>
    /// <param name="pieces">As read.</param>
    /// <param name="tables">By piece.</param>
    /// <param name="sizes">The sizes to make.</param>
    /// <param name="context">Receives what cannot be graded.</param>
    public static ImmutableArray<DraftedPiece> Of(
        ImmutableArray<DraftedPiece> pieces, ImmutableArray<(TextNode Piece, GradeTable Table)> tables, ImmutableArray<string> sizes, JobContext context)
    {
        string[] names = [.. pieces.Select(piece => piece.Draft.Name).Distinct()];
        foreach ((TextNode piece, _) in tables.Where(table => !names.Contains(table.Piece.Text)))
            context.Error(piece, "grade.pieces", AlterFaults.UnknownPiece(piece.Text, names));
        return [.. pieces.SelectMany(piece => tables.FirstOrDefault(table => table.Piece.Text == piece.Draft.Name) is { Piece: not null } table
            ? Graded(piece, table, sizes, context)
            : [piece])];
    }

    private static List<DraftedPiece> Graded(DraftedPiece piece, (TextNode Piece, GradeTable Table) table, ImmutableArray<string> sizes, JobContext context)
    {
        string path = "grade.pieces." + table.Piece.Text;
        if (piece.Keys.Shape.Value is TextNode { Text: var outline } && outline.Contains("{size}", StringComparison.Ordinal))
        {
            context.Error(table.Piece, path, AlterFaults.GradedAlready(piece.Draft.Name));
            return [];
        }
        if (PieceMaking.Make(piece.Draft with { Edges = [] }).Piece is null)
            return [piece];
        List<DraftedPiece> graded = [];
        foreach (string size in piece.Draft.Size.Length > 0 ? [piece.Draft.Size] : sizes)
        {
            if (!table.Table.Sizes.Contains(size))
            {
                context.Error(table.Piece, path, AlterFaults.UnknownSize(size, table.Table.Sizes));
                continue;
            }
            AlterationResult result = Grading.Apply(piece.Draft, table.Table, size);
            if (result.Draft is { } draft)
                graded.Add(piece with { Draft = draft });
            else
                context.Error(table.Piece, path, AlterFaults.Refused($"{piece.Draft.Name} {size}", "graded", result.Fault!, ""));
        }
        return graded;
    }
}
