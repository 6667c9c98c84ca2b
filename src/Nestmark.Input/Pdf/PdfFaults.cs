using System.Globalization;
using Nestmark.Input.Quantities;

namespace Nestmark.Input.Pdf;

/// <summary>The messages about PDF patterns.</summary>
internal static class PdfFaults
{
    public static Fault Encrypted() => new("The PDF is locked with a password.", "Open it with the password and print or save it to a PDF without one.");

    public static Fault NotReadable(string what) => new(
        $"The PDF is not readable: {QuantityFaults.Shown(what, 120)}.", "Open it in a viewer and print it to a new PDF.");

    public static Fault TooManyPages(int pages) => new(
        Text($"The PDF has {pages} pages; at most {PdfLimits.MostPages} are read."), "Save the pages with the pattern in a file of their own.");

    public static Fault TooMuch() => new(
        Text($"The PDF draws more than {PdfLimits.MostSegments} segments or {PdfLimits.MostLetters} letters."), "Save the pages with the pattern in a file of their own.");

    public static Fault OnlyPictures() => new(
        "The PDF holds pictures and no lines: it was scanned or photographed.", "Trace the pieces in a drawing program over the picture and save them as SVG.");

    public static Fault NoLines() => new("The PDF has no lines.", "Name a PDF in which the pattern is drawn as lines.");

    public static Fault PageBroken(int page, string what) => new(
        Text($"Page {page} is not readable: {QuantityFaults.Shown(what, 120)}."), "Print the file to a new PDF, or leave the page out.");

    public static Fault NoSuchPage(int page, int pages) => new(
        Text($"The tiles name page {page}, and the PDF has {pages}."), "Count the pages from 1 as a viewer shows them.");

    public static Fault PageSizes(int page) => new(
        Text($"Page {page} is not of the size of the first tile."), "Join pages of one size; leave instructions out.");

    public static Fault TrimTooWide() => new("Trim and overlap leave nothing of the pages.", "Write what is cut off each edge of a page, as trim: 10 mm.");

    public static Fault JoinsFound(string rows, int lines, TileCutting window, double overlapX, double overlapY) => new(
        Text($"The pages were joined as {rows}, by {lines} lines that go on from page to page; cut at {window.LeftMillimeters:0.#} to {window.RightMillimeters:0.#} mm across and {window.BottomMillimeters:0.#} to {window.TopMillimeters:0.#} mm up, with an overlap of {overlapX:0.#} and {overlapY:0.#} mm."),
        "Nothing needs to be done; to join them otherwise, say how with tiles: { pages: [[1, 2]], trim: 10 mm, overlap: 0 }.");

    public static Fault JoinsApart(string neighbors, int more) => new(
        Text($"The pages are joined as tiles says, but lines do not go on between {neighbors}{(more > 0 ? Text($" and {more} other pairs") : "")}."),
        "Check the order of the pages, trim and overlap in tiles, unless those lines are no part of the pattern.");

    public static Fault JoinsTooMany(int pages, int segments) => new(
        Text($"{pages} pages with {segments} segments are too many to find out how they are joined; none were joined."),
        "Say how they are joined: drawings: { FILE: { tiles: { pages: [[1, 2], [3, 4]], trim: 10 mm, overlap: 0 } } }.");

    /// <param name="ends">Where lines run off, as "page 2 on the left at 103.2 mm".</param>
    public static Fault JoinsNotFound(string ends) => new(
        $"Lines run off the edges of pages, and it was not found where they all go on (they run off {ends}); no pages were joined.",
        "Say how they are joined: drawings: { FILE: { tiles: { pages: [[1, 2], [3, 4]], trim: 10 mm, overlap: 0 } } }.");

    public static Fault JoinsNotCertain() => new(
        "Lines go on from page to page, but the pages could be joined in more than one way; none were joined.",
        "Say how they are joined: drawings: { FILE: { tiles: { pages: [[1, 2], [3, 4]], trim: 10 mm, overlap: 0 } } }.");

    public static Fault NothingSelected(string size, string kinds) => new(
        $"No line of the PDF is what select asks for{(size.Length > 0 ? " in size " + QuantityFaults.Shown(size) : "")}.",
        kinds.Length > 0 ? $"The file has these lines: {kinds}." : "The file has no lines.");

    public static Fault TooManyRuns(int runs, string kinds) => new(
        Text($"{runs} separate lines are too many to join."), $"Choose the lines of one size with select. The file has: {kinds}.");

    public static Fault NoSuchPiece(string name, IReadOnlyCollection<string> names) => new(
        $"No closed outline in the PDF has the text {QuantityFaults.Shown(name)} in it.",
        names.Count == 0 ? "No closed outline was found; if sizes lie on each other, choose one with select." : Spelling.Suggest(name, names));

    public static Fault SeveralPieces(string name, IEnumerable<string> places) => new(
        $"Several outlines have the text {QuantityFaults.Shown(name)} in them: {string.Join("; ", places)}.",
        "Choose the lines of one size with select, or name one of them by its number.");

    public static Fault Kinds(string kinds) => new($"The PDF has lines of several kinds: {kinds}.", "If sizes lie on each other, choose one with drawings: { FILE: { select: { … } } }.");

    public static Fault LeftOut(string list) => new($"Not understood, and left out: {list}.", "Draw on the piece by hand what matters.");

    public static Fault GapClosed(double gapMillimeters, string place) => new(
        Text($"The outline had a gap of {gapMillimeters:0.##} mm at {place}; it was closed with a straight line."), "Nothing needs to be done unless the pages were joined wrong.");

    public static Fault NoGrain(string name) => new(
        $"No grainline was found in {QuantityFaults.Shown(name)}: no straight line has the word grain beside it.", "The grain runs along the width of the page; turn the piece in a drawing program if it should not.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
