using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Guide;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>The edges of a piece with their lengths and allowances; of an altered piece the lengths before too.</summary>
internal static class EdgeTable
{
    /// <summary>The table, one row an edge; edges that an alteration took away come last.</summary>
    public static Table Of(JobPiece piece, MeasureSystem system)
    {
        string unit = LengthWords.TapeUnit(system);
        bool isAltered = piece.Before is not null;
        TableColumn edge = new("", "Edge", 0.18, Anchor.Start);
        TableColumn length = new($"Seam line, {unit}", isAltered ? "now" : "length", isAltered ? 0.2 : 0.4, Anchor.End);
        TableColumn allowance = new("", "allowance", isAltered ? 0.24 : 0.42, Anchor.End);
        return isAltered
            ? new Table([edge, length, new($"Seam line, {unit}", "before", 0.19, Anchor.End), new($"Seam line, {unit}", "changed", 0.19, Anchor.End), allowance], AlteredRows(piece, system))
            : new Table([edge, length, allowance], [.. piece.Piece.Edges.Select(one => ImmutableArray.Create(one.Name, LengthWords.TapeNumber(one.SeamLineLength, system), AllowanceOf(one, system)))]);
    }

    private static ImmutableArray<ImmutableArray<string>> AlteredRows(JobPiece piece, MeasureSystem system)
    {
        List<ImmutableArray<string>> rows = [];
        foreach (PieceEdge edge in piece.Piece.Edges)
        {
            Length? before = BeforeOf(piece, edge);
            string was = before is Length length ? LengthWords.TapeNumber(length, system) : "new";
            string changed = before is Length old && old != edge.SeamLineLength ? Signed(edge.SeamLineLength - old, system) : "";
            rows.Add([edge.Name, LengthWords.TapeNumber(edge.SeamLineLength, system), was, changed, AllowanceOf(edge, system)]);
        }
        foreach (EdgeChange gone in piece.Changes.SelectMany(change => change.Edges).Where(change => change.After is null))
            rows.Add([gone.Name, "gone", gone.Before is Length length ? LengthWords.TapeNumber(length, system) : "", "", ""]);
        return [.. rows];
    }

    /// <summary>The length that the first alteration of an edge found; of an edge that none changed, its own.</summary>
    private static Length? BeforeOf(JobPiece piece, PieceEdge edge)
    {
        EdgeChange? first = piece.Changes.SelectMany(change => change.Edges).FirstOrDefault(change => change.Name == edge.Name);
        return first is null ? edge.SeamLineLength : first.Before;
    }

    private static string Signed(Length length, MeasureSystem system) => (length > Length.Zero ? "+" : "") + LengthWords.TapeNumber(length, system);

    private static string AllowanceOf(PieceEdge edge, MeasureSystem system) =>
        edge.Kind == EdgeKind.Fold ? "on the fold" : LengthWords.Tape(edge.Allowance, system);
}
