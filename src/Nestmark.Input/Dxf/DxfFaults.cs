using System.Globalization;
using Nestmark.Input.Quantities;
using Nestmark.Pieces;

namespace Nestmark.Input.Dxf;

/// <summary>The messages about DXF files.</summary>
internal static class DxfFaults
{
    private const string SaveAgain = "Save the drawing again as DXF (text) from the program it came from.";

    public static Fault NotDxf() => new("The file is no DXF: it has no sections.", SaveAgain);

    public static Fault NotDxf(Fault fault) => new($"The file is no DXF: {char.ToLowerInvariant(fault.What[0])}{fault.What[1..]}", SaveAgain);

    public static Fault Binary() => new("The file is a binary DXF, which is not read.", "Save it as a text (ASCII) DXF.");

    public static Fault WideText() => new("The file is written in UTF-16, which DXF does not know.", "Save it as UTF-8 or in a code page of one byte a letter.");

    public static Fault NoCode(string found) => new($"Found \"{QuantityFaults.Shown(found)}\" where a group code, a whole number, was expected.", SaveAgain);

    public static Fault CutOff() => new("The file breaks off after a group code.", "Copy or save it again; the end is missing.");

    public static Fault LongLine(int kibibytes) => new($"A line is longer than {kibibytes} KiB.", SaveAgain);

    public static Fault NoEnd() => new("The file ends without EOF; its end may be missing.", "Look whether every piece is there, or save it again.");

    public static Fault TooMuch(string what) => new($"The file has more than {what}.", "Take out what does not belong to the pieces.");

    public static Fault BadNumber(string type, DxfTag tag) => new(
        tag.Value.Length == 0
            ? Text($"A {QuantityFaults.Shown(type)} lacks the value of code {tag.Code}.")
            : Text($"A {QuantityFaults.Shown(type)} has \"{QuantityFaults.Shown(tag.Value)}\" for code {tag.Code}; expected a number within a thousand million."),
        "Delete the entity, or save the drawing again; a half-read outline would be cut wrong.");

    public static Fault Fitted(string type, int count) => new(
        Text($"A {type} has only {count} fit points; a smooth curve was laid through them, perhaps not just as its program draws it."),
        "Save it with control points if it must be exact.");

    public static Fault NoUnits(string file) => new(
        "The drawing does not say its units: it has no UNITS text, no $INSUNITS and no $MEASUREMENT.",
        $"Say it in the job, as drawings: {{ {QuantityFaults.Shown(file)}: {{ unit: mm }} }} (or cm, m, in, ft). Measure a piece that you know: guessing is not safe, a slip is 25.4, 10 or 2.54 times.");

    public static Fault UnitOfJob(double jobMillimeters, double drawnMillimeters) => new(
        Text($"The job takes a unit of the drawing for {jobMillimeters:0.######} mm, and the drawing itself says {drawnMillimeters:0.######} mm; the job decides."),
        "Measure a piece that you know, or take unit out.");

    public static Fault NotGraded(int marks, string table) => new(
        (marks > 0 ? Text($"The drawing has {marks} numbers of grade rules") : "The drawing is to be graded")
            + (table.Length > 0 ? $" and names the grade rule table {QuantityFaults.Shown(table)}" : "")
            + ". Sizes are not made from it: the amounts stand in a file of their own, and whether they count from the base size or from the next size is not said in it.",
        "Save the drawing with every size as a piece of its own, or write the amounts that you know into the job under grade.");

    public static Fault UnknownUnits(string said) => new($"The drawing says \"UNITS: {QuantityFaults.Shown(said)}\"; expected ENGLISH or METRIC.", "The units of its header are taken instead.");

    public static Fault UnitsDiffer(string said, double headerMillimeters) => new(
        Text($"The drawing says UNITS: {QuantityFaults.Shown(said)}, but its header says {headerMillimeters:0.######} mm a unit; the text was taken."),
        "Measure a piece that you know.");

    public static Fault UnitsOfMeasurement(string units) => new(
        $"The drawing says its units only by $MEASUREMENT; {units} were taken.", "Measure a piece that you know, and set the units in the drawing program.");

    public static Fault MissingName(string name, IReadOnlyCollection<string> names) => new(
        $"The drawing has no piece {QuantityFaults.Shown(name)}.", names.Count == 0 ? "It holds no pieces." : Named(name, names));

    public static Fault MissingSize(string name, string size, IReadOnlyCollection<string> sizes) => new(
        $"The drawing holds {QuantityFaults.Shown(name)} not in size {QuantityFaults.Shown(size)}, only in {Shown(sizes)}.",
        Text($"Use these sizes; or write #{QuantityFaults.Shown(name)}-{QuantityFaults.Shown(sizes.First())} to cut that one in every size."));

    public static Fault SeveralSizes(string name, IReadOnlyCollection<string> sizes) => new(
        $"The drawing holds {QuantityFaults.Shown(name)} in the sizes {Shown(sizes)}, and the job has no sizes.",
        Text($"Add sizes: {{ {QuantityFaults.Shown(sizes.First())}: 1 }}, or name one, as #{QuantityFaults.Shown(name)}-{QuantityFaults.Shown(sizes.First())}."));

    public static Fault DoublePiece(string name, int firstLine, int secondLine) => new(
        Text($"The drawing holds {QuantityFaults.Shown(name)} twice, on lines {firstLine} and {secondLine}."), "Name the block instead, or delete one of them.");

    public static Fault NotInserted(string name) => new($"The piece {QuantityFaults.Shown(name)} is in a block that the drawing never shows.", "It was read all the same.");

    public static Fault UnknownBlock(string name) => new($"The drawing shows a block {QuantityFaults.Shown(name)} that it does not hold.", "Save it again; what it shows is missing.");

    public static Fault InsertCycle(string name) => new($"The block {QuantityFaults.Shown(name)} shows itself.", "Take the copy of the block out of it.");

    public static Fault InsertDepth() => new("Blocks are nested more than 16 deep.", "Explode the blocks in the drawing program.");

    public static Fault BeyondLimit(string type) => new($"A {QuantityFaults.Shown(type)} reaches beyond 100 m.", "Check the numbers and the units of the drawing.");

    public static Fault NoPieces() => new("The drawing holds no closed outline.", "Draw each piece as a closed line, its ends within 2 mm.");

    public static Fault NoBoundary() => new("The piece has no boundary on layer 1.", "Draw its outline on layer 1.");

    public static Fault OpenOutline(double gapMillimeters, string place) => new(
        Text($"The outline is open: a gap of {gapMillimeters:0.##} mm at {place}."), "Join the ends; gaps of up to 2 mm are closed.");

    public static Fault GapClosed(double gapMillimeters, string place) => new(
        Text($"The outline had a gap of {gapMillimeters:0.##} mm at {place}; it was closed with a straight line."), "Join the ends in the drawing.");

    public static Fault SeveralOutlines(int count) => new(Text($"The piece has {count} closed outlines, and none lies around the others."), "Keep one of them as its boundary.");

    public static Fault InnerOutlines(int count) => new(
        Text($"{count} closed {(count == 1 ? "line" : "lines")} inside the outline: drawn on the piece, not cut."), "Cut them out by hand if they are holes.");

    public static Fault CutOuts(int count) => new(
        Text($"{count} {(count == 1 ? "cutout is" : "cutouts are")} drawn on the piece and not cut."), "Cut them out by hand.");

    public static Fault TakenForCuttingLine() => new(
        "The outline is the cutting line, as pattern files draw it; seam allowances of the job are not added.",
        "Write line: seam if the allowance is not in it, and line: cut to leave this note out.");

    public static Fault BoundaryForSeamLine() => new(
        "The piece has no closed sew line (layer 14), so its boundary was taken for the seam line, as the job says.", "Compare a piece with its paper: pattern files usually have the allowance in the boundary.");

    public static Fault OpenedOut() => new("The drawing holds half of the piece; it was opened out at its mirror line.", "Write cut: 1 on fold to cut it on the fold.");

    public static Fault DrawnWhole() => new("The piece is cut on the fold, but the drawing holds both its halves.", "Write cut: 1.");

    public static Fault FittedRuns(int count, double bowMillimeters) => new(
        Text($"A smooth curve was laid through {count} {(count == 1 ? "run" : "runs")} of curve points, up to {bowMillimeters:0.#} mm beside the straight lines between them."),
        "Nothing needs to be done, unless straight lines are meant there.");

    public static Fault SecondLine(string what) => new($"The piece has a second {what}; the first was taken.", "Keep one of them.");

    public static Fault NotALine(string what) => new($"The {what} has no length.", $"Draw the {what} as one straight line.");

    public static Fault QuantityDiffers(string said, CutQuantity cut) => new(
        $"The drawing asks for a quantity of {QuantityFaults.Shown(said)}, the job cuts {cut}.", "The job decides; look whether it is as meant.");

    public static Fault LeftOut(IReadOnlyCollection<string> what) => new($"Not read: {string.Join(", ", what.Take(20))}{(what.Count > 20 ? ", …" : "")}.", "Nothing needs to be done unless a piece lacks something.");

    public static Fault Twins(int count) => new(Text($"{count} closed {(count == 1 ? "line lies" : "lines lie")} on another one; they were left out."), "Delete the doubled lines.");

    private static string Named(string name, IReadOnlyCollection<string> names)
    {
        string list = $"There are: {Shown(names)}.";
        return Spelling.Nearest(name, names) is string nearest ? $"Did you mean {QuantityFaults.Shown(nearest)}? {list}" : list;
    }

    private static string Shown(IReadOnlyCollection<string> words) => Spelling.ListOf([.. words.Select(word => QuantityFaults.Shown(word))]);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
