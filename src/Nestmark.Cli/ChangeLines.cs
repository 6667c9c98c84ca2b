using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>What the alterations did, one a line, with the measures that changed along the seam line.</summary>
internal static class ChangeLines
{
    private const double SquareMillimetersPerSquareInch = 25.4 * 25.4;

    /// <summary>Writes the changes of all pieces, in the order of the alterations; nothing where there are none.</summary>
    public static void Write(TextWriter writer, Job job)
    {
        foreach (JobPiece piece in job.Pieces)
        {
            foreach (PieceChange change in piece.Changes)
                writer.WriteLine($"{piece.Piece.Title}: {Text(change, job.System)}");
        }
    }

    private static string Text(PieceChange change, MeasureSystem system)
    {
        string area = $"Area {Area(change.AreaBeforeSquareMillimeters, system)} to {Area(change.AreaAfterSquareMillimeters, system)} {AreaUnit(system)}";
        return $"{change.What} {string.Join(", ", change.Edges.Select(edge => Edge(edge, system)).Prepend(area))}.";
    }

    private static string Edge(EdgeChange edge, MeasureSystem system) => (edge.Before, edge.After) switch
    {
        (null, { } after) => $"{edge.Name} new, {LengthWords.Tape(after, system)}",
        ({ } before, null) => $"{edge.Name} gone, {LengthWords.Tape(before, system)}",
        (Length before, Length after) => $"{edge.Name} {LengthWords.Tape(before, system)} to {LengthWords.Tape(after, system)}",
        _ => edge.Name,
    };

    private static string Area(double squareMillimeters, MeasureSystem system) =>
        (squareMillimeters / (system == MeasureSystem.Imperial ? SquareMillimetersPerSquareInch : 100)).ToString("0", CultureInfo.InvariantCulture);

    private static string AreaUnit(MeasureSystem system) => system == MeasureSystem.Imperial ? "sq in" : "cm²";
}
