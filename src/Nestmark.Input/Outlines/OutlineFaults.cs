using System.Globalization;

namespace Nestmark.Input.Outlines;

/// <summary>The messages about the shape of an outline.</summary>
internal static class OutlineFaults
{
    public static Fault TooFewPoints() => new("The outline has no area.", "Draw a closed shape with at least three corners.");

    public static Fault TooManyPoints(int count, int mostRead, int mostLeft) =>
        new(Text($"The outline has {count} points; at most {mostRead} are read, and at most {mostLeft} may be left after thinning."), "Simplify the curve in the drawing program.");

    public static Fault Thinned(int before, int after) =>
        new(Text($"The outline had {before} points and was thinned to {after}, outward within 0.02 mm."), "Nothing needs to be done.");

    public static Fault Spike(string place) =>
        new($"A spike without width at {place} was taken off the outline.", "Nothing needs to be done, unless the spike meant something.");

    public static Fault LoopCutOff(string place) =>
        new($"The outline crossed itself in a tiny loop at {place}; the loop was cut off.", "Look at the piece there, and redraw it if it is not as meant.");

    public static Fault CrossesItself(string places) =>
        new($"The outline crosses or touches itself at {places}.", "Move the points there so that the outline runs round the piece once.");

    public static Fault TwiceRound() => new("The outline runs round the piece twice.", "Delete one of the two rounds, which lie on each other.");

    public static Fault UnusualSize(double widthMillimeters, double heightMillimeters) => new(
        Text($"The outline measures {widthMillimeters:0.#} x {heightMillimeters:0.#} mm, which is unusual for a piece."),
        "Check the units of the drawing: a slip of 10, 2.54 or 25.4 times is the usual reason.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
