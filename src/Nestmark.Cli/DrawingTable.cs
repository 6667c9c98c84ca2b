using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>The pieces of a drawing as a table.</summary>
internal static class DrawingTable
{
    /// <summary>Writes one row a piece: name, size, extent, what the drawing says of it.</summary>
    public static void Write(TextWriter writer, ImmutableArray<ListedPiece> pieces) =>
        PieceTable.Write(writer, ["piece", "size", "extent", "the drawing says"], pieces.Select(Cells));

    private static string[] Cells(ListedPiece piece) =>
        [piece.Name, piece.Size, $"{Tape(piece.Width)} x {Tape(piece.Height)}", string.Join("; ", piece.Said)];

    private static string Tape(Length length) => LengthWords.Tape(length, MeasureSystem.Metric);
}
