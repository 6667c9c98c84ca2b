using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>The messages about the key least.</summary>
internal static class LeastFaults
{
    public static Fault Form() => new("Expected edges and the least allowance of each.", "Write least: { A-B: 2 }, or least: { seam: 1 } for all edges without an allowance of their own.");

    public static Fault OfCuttingLine(string title) => new(
        $"{title}: The outline is the cutting line, so no allowance of it is known that could be narrower.",
        "Draw the seam line and write line: seam, or take least out.");

    public static Fault NoSuchEdge(Piece piece, string edge) =>
        new($"{piece.Title}: There is no edge {edge}.", $"The edges, counter-clockwise, are {string.Join(", ", piece.Edges.Select(one => one.Name))}.");

    public static Fault NarrowerAlready(string title, LeastAllowance least, Length now, MeasureSystem system) => new(
        $"{title}: {(least.Edge.Length == 0 ? "The seam allowance" : "The allowance of " + least.Edge)} is {LengthWords.Tape(now, system)}, and its least is said to be {LengthWords.Tape(least.Width, system)}.",
        "Write what it may shrink to where cloth is short, or take it out.");
}
