using System.Globalization;
using Nestmark.Input.Quantities;

namespace Nestmark.Input.Svg;

/// <summary>The messages about drawings.</summary>
internal static class SvgFaults
{
    private const string SetSize = "Give the svg element width and height in mm and a viewBox, as width=\"400mm\" height=\"300mm\" viewBox=\"0 0 400 300\".";

    public static Fault NotXml(string what) => new($"The drawing is not readable as XML: {QuantityFaults.Shown(what, 120)}.", "Save it again from the drawing program.");

    public static Fault EntityBomb() => new("The drawing's entities unfold to more than 100,000 characters.", "Save it again without entities in its DOCTYPE.");

    public static Fault ExternalEntity() => new("The drawing's DOCTYPE names another file; no other file is read.", "Take the ENTITY lines with SYSTEM or PUBLIC out.");

    public static Fault TooDeep() => new("Elements are nested more than 256 levels deep.", "Ungroup the drawing.");

    public static Fault NotSvg(string name) => new($"The root element is {QuantityFaults.Shown(name)}, not svg.", "Save the drawing as SVG.");

    public static Fault NoScale(string found) => new(
        $"The drawing does not say its true size: {found}.",
        SetSize + " Guessing is not safe: programs write 72, 90 or 96 units per inch. Or say it in the job: drawings: { FILE.svg: { test_square: 5 cm } }, or scale: 96 dpi.");

    public static Fault Stretched(double xRatio, double yRatio) => new(
        Text($"The drawing is stretched: 1 unit is {xRatio:0.#####} mm wide and {yRatio:0.#####} mm high."),
        "Make width : height the same as in the viewBox, and take preserveAspectRatio=\"none\" out.");

    public static Fault BadViewBox(string found) => new(
        $"Found viewBox=\"{QuantityFaults.Shown(found)}\"; expected four numbers, the last two above zero.", SetSize);

    public static Fault MissingId(string id, IReadOnlyCollection<string> ids) => new(
        $"The drawing has no element with the id {QuantityFaults.Shown(id)}.",
        ids.Count == 0 ? "No group or shape in it has an id; give the piece one." : Spelling.Suggest(id, ids));

    public static Fault DoubleId(string id, int line) => new(
        Text($"The id {QuantityFaults.Shown(id)} stands in the drawing twice, first on line {line}."), "Give each element an id of its own.");

    public static Fault Hidden() => new("The piece is hidden (display: none).", "Show it, or name another id.");

    public static Fault PathData(int position, string expected) => new(
        Text($"The path data breaks at character {position}: {expected}."), "Mend or redraw the path; a half-read outline would be cut wrong.");

    public static Fault BadNumber(string attribute, string found) => new(
        $"Found {attribute}=\"{QuantityFaults.Shown(found)}\"; expected a number.", "Write a plain number, or save the drawing again.");

    public static Fault BadPoints(int position) => new(
        Text($"The points break at character {position}: expected a number."), "Mend or redraw the shape.");

    public static Fault BelowZero(string attribute, string found) => new(
        $"Found {attribute}=\"{QuantityFaults.Shown(found)}\" below zero.", "Write a length above zero.");

    public static Fault RelativeUnit(string attribute, string found) => new(
        $"Found {attribute}=\"{QuantityFaults.Shown(found)}\"; its unit has no fixed length.", "Write a plain number, or a length in mm, cm or in.");

    public static Fault BadTransform(string found) => new(
        $"Found transform=\"{QuantityFaults.Shown(found)}\", which cannot be read.", "Apply the transform in the drawing program and save again.");

    public static Fault FlatTransform() => new("The transform flattens the shape to a line.", "Remove the scale of zero.");

    public static Fault StyleMoves(string property) => new(
        $"A style sets \"{QuantityFaults.Shown(property)}\", which moves or reshapes what is drawn; only attributes are read.",
        "Move it to an attribute, as transform=\"…\", or apply it in the drawing program.");

    public static Fault UseCycle(string id) => new($"The use of {QuantityFaults.Shown(id)} leads back to itself.", "Copy the shape instead.");

    public static Fault UseDepth() => new("Copies of copies are nested more than 16 deep.", "Turn the copies into shapes of their own.");

    public static Fault TooManyShapes() => new("The piece unfolds to more than 100,000 elements.", "Turn the copies into shapes of their own, and simplify the piece.");

    public static Fault UseTarget(string href) => new(
        $"The use names {QuantityFaults.Shown(href)}, which is not in this drawing.", "Copy the shape into the drawing; other files are not read.");

    public static Fault SymbolScale() => new("A symbol with a viewBox is shown without width and height.", "Give the use element width and height, or turn it into a group.");

    public static Fault BeyondLimit() => new("The shape reaches beyond 1 km.", "Check the numbers and the transform.");

    public static Fault NoShapes() => new("The piece has no closed outline.", "Draw its outline as a closed shape in the group, or give the group's id to the shape.");

    public static Fault OpenOutline(double gapMillimeters, string from, string to) => new(
        Text($"The outline is open: a gap of {gapMillimeters:0.##} mm between {from} and {to}."),
        "Join the ends, or give the shape another class if it is not the outline.");

    public static Fault GapClosed(double gapMillimeters, string place) => new(
        Text($"The outline had a gap of {gapMillimeters:0.##} mm at {place}; it was closed with a straight line."), "Join the ends in the drawing.");

    public static Fault Twin() => new("The outline is drawn twice, one on the other; one of them was used.", "Delete the other.");

    public static Fault SeveralOutlines(string list) => new(
        $"The piece has several closed shapes and one outline is needed: {list}.",
        "Give the outline class=\"outline\", and the others class line, mark, notch or corner. Holes are not cut: draw them with class line.");

    public static Fault NoRole(string shape) => new(
        $"The {shape} is not closed and has no class; it was left out.", "Give it the class line, grain, fold, notch, mark or corner.");

    public static Fault NotRead(string name) => new(
        $"A picture ({QuantityFaults.Shown(name)}) in the piece is no line and was left out.", "Trace what matters of it as lines.");

    public static Fault SecondOne(string role) => new($"The piece has a second {role}.", "Keep one of them.");

    public static Fault NotALine(string role) => new($"The {role} is no line with two ends apart.", $"Draw the {role} as one straight line.");

    public static Fault CornerAway(string place) => new($"The corner mark at {place} is more than 1 mm from the outline.", "Move it onto the outline.");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
