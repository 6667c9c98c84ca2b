using Nestmark.Input.Quantities;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>The messages about the keys of a job file and what they name.</summary>
internal static class JobFaults
{
    public static Fault MissingFile(string path) => new($"There is no file {QuantityFaults.Shown(path)}.", "Check the name and the folder.");

    public static Fault MissingDrawing(string file) =>
        new($"There is no file {QuantityFaults.Shown(file)} beside the job file.", "Check the name; it is looked up from the job file's folder.");

    public static Fault Unreadable() => new("The file cannot be opened.", "Check that it is a file and that you may read it.");

    public static Fault TooLarge(long mebibytes) => new($"The file is larger than {mebibytes} MiB.", "Take out what does not belong to the pieces.");

    public static Fault ExpectedText() => new("Expected one value here.", "Write a word, a number or a length after the colon.");

    public static Fault ExpectedMap() => new("Expected keys and values here.", "Write them indented below, or as { key: value }.");

    public static Fault UnknownKey(string key, IReadOnlyCollection<string> known) =>
        new($"The key {QuantityFaults.Shown(key)} is not known here.", Spelling.Nearest(key, known) is string nearest
            ? $"Did you mean {nearest}?"
            : $"Known keys: {string.Join(", ", known)}.");

    public static Fault SplitByComma(string key) => new(
        $"Found \"{QuantityFaults.Shown(key)}\" after a comma; inside braces a comma starts the next key.", "Write decimals with a point, as 1.5 cm.");

    public static Fault UnknownWord(string word, IReadOnlyList<string> expected) =>
        new($"Found \"{QuantityFaults.Shown(word)}\"; expected {string.Join(", ", expected)}.", Spelling.Nearest(word, expected) is string nearest
            ? $"Did you mean {nearest}?"
            : "Write one of these words.");

    public static Fault MissingKey(string key, string example) => new($"The key {key} is missing.", $"Add {example}.");

    public static Fault WrongVersion(string found) =>
        new($"Found version \"{QuantityFaults.Shown(found)}\" of the job file; this program reads version 1.", "Write nestmark: 1, or use a newer program.");

    public static Fault AreaForm(string[] keys) =>
        new($"Expected one shape: {string.Join(", ", keys)}.", "Write for example rectangle: 60 x 40.");

    public static Fault LShapeForm() =>
        new("An L is written as a rectangle less the one that is missing in its corner.", "Write l_shape: 120 x 80 less 60 x 40.");

    public static Fault HolesForm() => new("Holes are a list of shapes.", "Write holes: [{ circle: 3, at: [20, 15] }].");

    public static Fault BandForm() => new("A band runs from a place along the cloth to one behind it.", "Write { from: 120, to: 124 }.");

    public static Fault FlawsOnThisLay() => new(
        "On this lay the places along the cloth are not known before it is made, so flaws cannot be kept off.",
        "Write lay: open, folded, partial fold, double fold or tubular, or cut the flaw away first.");

    public static Fault DepthWithoutPartialFold() =>
        new("Only a partial fold has a depth.", "Write lay: partial fold beside it, or leave fold_depth out.");

    public static Fault FoldTooDeep(string half) =>
        new($"A fold this deep leaves nothing in one layer; half the usable width is {half}.", "Write a smaller depth, or lay: folded.");

    public static Fault NoPieces() => new("The job has no pieces.", "Add pieces: { pocket: { rectangle: 16 x 18, cut: 2 } }.");

    public static Fault NoCloths() => new("The key cloths has no cloth.", "Add cloths: { shell: { width: 140 } }, or leave the key out.");

    public static Fault NoSizes() => new("The key sizes has no size.", "Write sizes: { M: 1 }, or leave the key out.");

    public static Fault DefaultCloth(string width) =>
        new($"No cloths are given; the plan takes one folded cloth {width} wide, one-way.", "Add cloths: { shell: { width: 140 } } with the width that you will buy.");

    public static Fault BadName(string name) =>
        new($"The name \"{QuantityFaults.Shown(name)}\" cannot be used.", "Use 1 to 40 letters, digits, blanks or the signs - _ . / +.");

    public static Fault NoShape() => new("The piece has no shape.", "Add one of outline: FILE#ID, rectangle: 16 x 18, polygon: [[0, 0], …] or circle: 20.");

    public static Fault SeveralShapes(string first, string second) =>
        new($"The piece has two shapes: {first} and {second}.", "Keep one of outline, rectangle, polygon and circle.");

    public static Fault OutlineForm(string text) =>
        new($"Found \"{QuantityFaults.Shown(text)}\"; expected FILE#ID.", "Write the drawing and the id of the piece in it, as smock.svg#front.");

    public static Fault OutlineAddress(string file) =>
        new($"Found \"{QuantityFaults.Shown(file)}\"; drawings are read from this computer only.", "Save the drawing beside the job file and name it here.");

    public static Fault OutlineFormat(string file, IReadOnlyList<string> formats) => new(
        $"Found \"{QuantityFaults.Shown(file)}\"; drawings are read from {string.Join(", ", formats)} files.", $"Save the drawing as {string.Join(" or ", formats)}.");

    public static Fault SizeWithoutSizes() =>
        new("The outline says {size}, but the job has no sizes.", "Add sizes: { M: 1 }, or name the id without {size}.");

    public static Fault PieceSizeWithoutSizes() => new("The piece names sizes, but the job has none.", "Add sizes: { M: 1 } to the job, or take the piece's sizes out.");

    public static Fault UnknownBraces(string found) => new($"Found {QuantityFaults.Shown(found)} in the outline; only {{size}} is filled in.", "Write {size}.");

    public static Fault MissingCut() => MissingKey("cut", "cut: 2, cut: 1 pair or cut: 1 on fold");

    public static Fault ClothAndCloths() => new("The piece has both cloth and cloths.", "Keep cloth for one cloth, cloths for several.");

    public static Fault NoClothOfPiece() => new("The key cloths names no cloth.", "Write cloths: { shell: 1 pair, lining: 1 pair }, or leave the key out.");

    public static Fault ClothOfPieceForm() =>
        new("Expected what is cut from this cloth.", "Write how often, as 1 pair, or { cut: 1 pair, seam: 0 }.");

    public static Fault AllowanceOfCuttingLine() => new(
        "The outline is the cutting line, so no cloth of this piece can have an allowance of its own.",
        "Draw the seam line and write line: seam, or take the allowance out.");

    public static Fault UnknownCloth(string cloth, IReadOnlyCollection<string> cloths) =>
        new($"There is no cloth \"{QuantityFaults.Shown(cloth)}\" in this job.", Spelling.Suggest(cloth, cloths));

    public static Fault EdgeForm(string text) =>
        new($"Found the edge \"{QuantityFaults.Shown(text)}\"; expected two corner letters.", "Write an edge as A-B, its corners counter-clockwise.");

    public static Fault EdgesForm() => new("Expected edges and their allowances.", "Write edges: { A-B: 4 } or edges: { A-B: { width: 4, ends: reflected } }.");

    public static Fault PolygonForm() => new("Expected three or more points.", "Write polygon: [[0, 0], [30, 0], [30, 20]].");

    public static Fault PolygonPoint() => new("Expected a point.", "Write it as [x, y], x along the grain.");

    public static Fault NoUsableWidth(string width) =>
        new($"After shrinkage and selvages the cloth has no width left ({width}).", "Check width, selvage and shrinkage and their units.");

    public static Fault UnusualWidth(string width) =>
        new($"The cloth is {width} wide; cloths are sold from about 30 cm to 3 m.", "Check the number and its unit.");

    public static Fault PieceFault(string title, string drawnAt, PieceFault fault) =>
        new(drawnAt.Length == 0 ? $"{title}: {fault.What}" : $"{title} ({drawnAt}): {fault.What}", fault.Hint);
}
