using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>Every file in fixtures/trouble is named for its trouble; the reader must name the place, what is wrong, and a remedy.</summary>
public sealed class TroubleTests
{
    [Theory]
    [InlineData("seam-unknown-piece", Severity.Error, "seam-unknown-piece.yaml:7:5 (seams[1])", "There is no piece \"bck\" in this job.", "There are: front.")]
    [InlineData("seam-unknown-edge", Severity.Error, "seam-unknown-edge.yaml:7:5 (seams[1])", "front has no run of edges A-C.", "Its edges, counter-clockwise, are A-B, B-C, C-D, D-A")]
    [InlineData("seam-on-the-fold", Severity.Error, "seam-on-the-fold.yaml:7:5 (seams[1])", "front: the edge A-B lies on the fold and", "Name the edges that are sewn.")]
    [InlineData("seam-without-notch", Severity.Error, "seam-without-notch.yaml:7:5 (seams[1])", "There is no notch \"notch 1\" on the side", "Give lengths from its start.")]
    [InlineData("draft-in-a-circle", Severity.Error, "draft-in-a-circle.yaml:5:16 (pieces.one.band)", "one cannot be drafted, since two could not be made.", "Mend that piece first.")]
    [InlineData("skirt-too-long", Severity.Error, "skirt-too-long.yaml:4:34 (pieces.skirt.circle_skirt)", "skirt: A skirt 130 cm long in 1 panel", "The longest that works is")]
    [InlineData("leftover-too-small", Severity.Error, "leftover-too-small.yaml:4:28 (pieces.binding.bias)", "binding: A leftover of 60 cm x 45 cm", "Take a square of")]
    [InlineData("counted-cut", Severity.Error, "counted-cut.yaml:4:21 (pieces.ruffle.ruffle)", "How often a ruffle is cut is counted.", "Take cut out")]
    [InlineData("facing-of-two", Severity.Error, "facing-of-two.yaml:4:79 (pieces.facing.facing.of)", "A facing is taken from one run of edges", "Write of: front.D-E")]
    [InlineData("alias-bomb", Severity.Error, "alias-bomb.yaml:5:6", "Found the anchor &a; anchors are not used in", "Take it out and write repeated")]
    [InlineData("alter-misspelt-key", Severity.Error, "alter-misspelt-key.yaml:9:5 (alter.1)", "The key at is missing.", "Add at: 20 from A,")]
    [InlineData("alter-no-verb", Severity.Error, "alter-no-verb.yaml:9:5 (alter.1)", "Found no alteration here.", "Begin with one of widen, narrow,")]
    [InlineData("alter-too-far", Severity.Error, "alter-too-far.yaml:9:7 (alter.1.shorten)", "pocket cannot be shortened 30 cm at 4 from A: ", "The largest amount that works here is")]
    [InlineData("alter-unknown-corner", Severity.Error, "alter-unknown-corner.yaml:9:7 (alter.1.move)", "pocket cannot be moved at corner Q 2 cm along", "The corners, counter-clockwise, are A, B,")]
    [InlineData("alter-unknown-piece", Severity.Error, "alter-unknown-piece.yaml:9:14 (alter.1.widen)", "There is no piece \"poket\" to alter.", "Did you mean pocket?")]
    [InlineData("bad-transform", Severity.Error, "bad-transform.svg:2:2 (#front)", "Found transform=\"spin(3)\", which cannot be read.", "Apply the transform in the drawing")]
    [InlineData("bad-viewbox", Severity.Error, "bad-viewbox.svg:1:2", "Found viewBox=\"0 0 -400 300\"; expected four numbers, the", "Give the svg element width and")]
    [InlineData("bare-percent", Severity.Error, "bare-percent.yaml:7:35 (cloths.shell.shrinkage)", "Found \"5\"; expected a percentage from 0 % to", "Write it as 5 %.")]
    [InlineData("beyond-a-kilometer", Severity.Error, "beyond-a-kilometer.svg:2:2 (#front)", "The shape reaches beyond 1 km.", "Check the numbers and the transform.")]
    [InlineData("broken-flag", Severity.Error, "broken-flag.svg:2:2 (#front)", "The path data breaks at character 19: expected an", "Mend or redraw the path; a")]
    [InlineData("corner-away", Severity.Error, "corner-away.svg:4:2 (#front)", "The corner mark at 300.0, 60.0 mm from the", "Move it onto the outline.")]
    [InlineData("crossing-polygon", Severity.Error, "crossing-polygon.yaml:5:19 (pieces.bow.polygon)", "The outline crosses or touches itself at 10, 10", "Move the points there so that")]
    [InlineData("crosswise-lay", Severity.Error, "crosswise-lay.yaml:7:29 (cloths.shell.lay)", "Found \"crosswise\"; expected open, folded, partial fold,", "Write one of these words.")]
    [InlineData("css-transform", Severity.Error, "css-transform.svg:2:2 (#front)", "A style sets \"transform\", which moves or reshapes what", "Move it to an attribute, as")]
    [InlineData("decimal-comma-in-braces", Severity.Error, "decimal-comma-in-braces.yaml:5:54 (pieces.pocket.5 cm)", "Found \"5 cm\" after a comma; inside braces a", "Write decimals with a point, as")]
    [InlineData("decimal-comma", Severity.Error, "decimal-comma.yaml:8:11 (pieces.pocket.seam)", "Found \"1,5 cm\" with a comma.", "Write \"1.5 cm\": decimals take a")]
    [InlineData("deep-groups", Severity.Error, "deep-groups.svg:2:770", "Elements are nested more than 256 levels deep.", "Ungroup the drawing.")]
    [InlineData("deep-nesting", Severity.Error, "deep-nesting.yaml:8:9 (seams[1])", "Expected keys and values here.", "Write them indented below, or as")]
    [InlineData("double-id", Severity.Error, "double-id.svg:3:2 (#front)", "The id front stands in the drawing twice, first", "Give each element an id of")]
    [InlineData("doubled-outline", Severity.Note, "doubled-outline.svg:4:2 (#front)", "The outline is drawn twice, one on the other;", "Delete the other.")]
    [InlineData("duplicate-key", Severity.Error, "duplicate-key.yaml:6:3 (pocket)", "The key pocket stands here a second time; first", "Keep one of the two.")]
    [InlineData("empty", Severity.Error, "empty.yaml", "The file is empty.", "Start it with the line nestmark:")]
    [InlineData("endless-digits", Severity.Error, "endless-digits.yaml:7:19 (cloths.shell.width)", "Found \"99999999999999999999999999999999999\", which is too large.", "Check the number and its unit.")]
    [InlineData("entity-bomb", Severity.Error, "entity-bomb.svg", "The drawing's entities unfold to more than 100,000 characters.", "Save it again without entities in")]
    [InlineData("external-entity", Severity.Error, "external-entity.svg:1:11", "The drawing's DOCTYPE names another file; no other file", "Take the ENTITY lines with SYSTEM")]
    [InlineData("flat-transform", Severity.Error, "flat-transform.svg:2:2 (#front)", "The transform flattens the shape to a line.", "Remove the scale of zero.")]
    [InlineData("fold-not-straight", Severity.Error, "fold-not-straight.yaml:5:74 (pieces.collar.fold)", "collar: Edge A-B bends more than 0.1 mm and", "Make it straight, or mark corners")]
    [InlineData("grade-without-offsets", Severity.Error, "grade-without-offsets.yaml:12:13 (grade.pieces.pocket)", "pocket S cannot be graded: The size S has", "Add its offsets, or write between:")]
    [InlineData("hidden-piece", Severity.Error, "hidden-piece.svg:3:2 (#front)", "The piece is hidden (display: none).", "Show it, or name another id.")]
    [InlineData("hole", Severity.Error, "hole.svg:2:2 (#front)", "The piece has several closed shapes and one outline", "Give the outline class=\"outline\", and the")]
    [InlineData("huge-coordinates", Severity.Error, "huge-coordinates.svg:2:2 (#front)", "The path data breaks at character 14: found a", "Mend or redraw the path; a")]
    [InlineData("huge-number", Severity.Error, "huge-number.yaml:7:19 (cloths.shell.width)", "Found \"1e400\" with an exponent.", "Write the number in plain digits,")]
    [InlineData("match-form", Severity.Error, "match-form.yaml:9:9 (match[1])", "Found \"front.A fits back.A\"; expected a rule of matching.", "Write PIECE.POINT matches PIECE.POINT lengthwise")]
    [InlineData("match-unknown-point", Severity.Error, "match-unknown-point.yaml:9:9 (match[1])", "back has no point \"side\".", "There are: A, B, C, D, center.")]
    [InlineData("match-without-repeat", Severity.Error, "match-without-repeat.yaml:9:9 (match[1])", "The cloth shell has no repeat across it.", "Add repeat: { across: 6 cm }")]
    [InlineData("merged-key", Severity.Error, "merged-key.yaml:6:11 (<<)", "Found <<; merged keys are not used in job", "Write the keys out.")]
    [InlineData("missing-file", Severity.Error, "missing-file.yaml:5:21 (pieces.front.outline)", "There is no file nowhere.svg beside the job file.", "Check the name; it is looked")]
    [InlineData("missing-id", Severity.Error, "missing-id.yaml:5:21 (pieces.front.outline)", "The drawing has no element with the id frnt.", "Did you mean front?")]
    [InlineData("missing-keys", Severity.Error, "missing-keys.yaml:1:1 (title)", "The key title is missing.", "Add title: with the name of")]
    [InlineData("negative-seam", Severity.Error, "negative-seam.yaml:4:7 (seam)", "Found \"-1 cm\"; a length below zero makes no", "Write zero or more.")]
    [InlineData("no-cloth", Severity.Note, "no-cloth.yaml:1:1 (cloths)", "No cloths are given; the plan takes one folded", "Add cloths: { shell: { width:")]
    [InlineData("no-outline", Severity.Error, "no-outline.svg:2:2 (#front)", "The piece has no closed outline.", "Draw its outline as a closed")]
    [InlineData("no-scale", Severity.Error, "no-scale.svg:1:2", "The drawing does not say its true size: width=\"400\"", "Give the svg element width and")]
    [InlineData("no-shape", Severity.Error, "no-shape.yaml:5:3 (pieces.pocket)", "The piece has no shape.", "Add one of outline: FILE#ID, rectangle:")]
    [InlineData("no-viewbox", Severity.Error, "no-viewbox.svg:1:2", "The drawing does not say its true size: it", "Give the svg element width and")]
    [InlineData("no-width-left", Severity.Error, "no-width-left.yaml:7:3 (cloths.shell.width)", "After shrinkage and selvages the cloth has no width", "Check width, selvage and shrinkage and")]
    [InlineData("not-a-drawing", Severity.Error, "not-a-drawing.yaml:5:21 (pieces.front.outline)", "Found \"picture.png\"; drawings are read from SVG, DXF, PDF files.", "Save the drawing as SVG or DXF or PDF.")]
    [InlineData("not-a-map", Severity.Error, "not-a-map.yaml:1:1", "Expected keys and values, as title: Smock.", "Start the file with the line")]
    [InlineData("not-a-number", Severity.Error, "not-a-number.yaml:7:19 (cloths.shell.width)", "Found \".nan\", which is no number.", "Write a plain number, as 1.5.")]
    [InlineData("not-svg", Severity.Error, "not-svg.svg:1:2", "The root element is html, not svg.", "Save the drawing as SVG.")]
    [InlineData("not-text", Severity.Error, "not-text.yaml", "The file is not UTF-8 text.", "Save the job file as plain")]
    [InlineData("not-xml", Severity.Error, "not-xml.svg:3:3", "The drawing is not readable as XML: The 'path'", "Save it again from the drawing")]
    [InlineData("number-missing", Severity.Error, "number-missing.svg:2:2 (#front)", "The path data breaks at character 17: expected a", "Mend or redraw the path; a")]
    [InlineData("open-outline", Severity.Error, "open-outline.svg:2:2 (#front)", "The outline is open: a gap of 30 mm", "Join the ends, or give the")]
    [InlineData("price-without-length", Severity.Error, "price-without-length.yaml:7:38 (cloths.shell.buy.price)", "Found \"18.50\"; expected a price per length.", "Write it as 18.50 per m")]
    [InlineData("self-crossing", Severity.Error, "self-crossing.svg:2:2 (#front)", "The outline crosses or touches itself at 150.0, 125.0", "Move the points there so that")]
    [InlineData("size-without-sizes", Severity.Error, "size-without-sizes.yaml:5:21 (pieces.front.outline)", "The outline says {size}, but the job has no", "Add sizes: { M: 1 },")]
    [InlineData("small-gap", Severity.Note, "small-gap.svg:2:2 (#front)", "The outline had a gap of 1 mm at", "Join the ends in the drawing.")]
    [InlineData("small-loop", Severity.Note, "small-loop.svg:2:2 (#front)", "The outline crossed itself in a tiny loop at", "Look at the piece there, and")]
    [InlineData("spike", Severity.Note, "spike.svg:2:2 (#front)", "A spike without width at 260.0, 100.0 mm from", "Nothing needs to be done, unless")]
    [InlineData("stray-line", Severity.Note, "stray-line.svg:4:2 (#front)", "The path is not closed and has no class;", "Give it the class line, grain,")]
    [InlineData("stretched", Severity.Error, "stretched.svg:1:2", "The drawing is stretched: 1 unit is 1 mm", "Make width : height the same")]
    [InlineData("style-sheet-moves", Severity.Error, "style-sheet-moves.svg:1:2", "A style sets \"transform\", which moves or reshapes what", "Move it to an attribute, as")]
    [InlineData("tab-indent", Severity.Error, "tab-indent.yaml:5:1", "Found a tab at the start of the line;", "Replace the tab by spaces.")]
    [InlineData("tiny-piece", Severity.Note, "tiny-piece.svg:2:2 (#front)", "The outline measures 3 x 2 mm, which is", "Check the units of the drawing:")]
    [InlineData("twice-round", Severity.Error, "twice-round.svg:2:2 (#front)", "The outline runs round the piece twice.", "Delete one of the two rounds,")]
    [InlineData("two-documents", Severity.Error, "two-documents.yaml:8:1", "Found a second document after ---.", "Keep one job in a file.")]
    [InlineData("two-grainlines", Severity.Error, "two-grainlines.svg:5:2 (#front)", "The piece has a second grainline.", "Keep one of them.")]
    [InlineData("two-outlines", Severity.Error, "two-outlines.svg:2:2 (#front)", "The piece has several closed shapes and one outline", "Give the outline class=\"outline\", and the")]
    [InlineData("two-shapes", Severity.Error, "two-shapes.yaml:5:33 (pieces.pocket.circle)", "The piece has two shapes: rectangle and circle.", "Keep one of outline, rectangle, polygon")]
    [InlineData("unclear-cut", Severity.Error, "unclear-cut.yaml:5:38 (pieces.pocket.cut)", "Found \"two pairs\"; expected how often the piece is", "Write 2, 1 pair, 2 pairs")]
    [InlineData("unclosed-brace", Severity.Error, "unclosed-brace.yaml:6:1", "The file cannot be read here: a brace, bracket", "Check the indentation, brackets, quotes and")]
    [InlineData("unknown-cloth", Severity.Error, "unknown-cloth.yaml:5:53 (pieces.pocket.cloth)", "There is no cloth \"shel\" in this job.", "Did you mean shell?")]
    [InlineData("unknown-key", Severity.Error, "unknown-key.yaml:5:46 (pieces.pocket.seem)", "The key seem is not known here.", "Did you mean seam?")]
    [InlineData("unknown-unit", Severity.Error, "unknown-unit.yaml:7:19 (cloths.shell.width)", "Found \"140 centimetres\" with the unit \"centimetres\"; expected mm,", "Write the length with one of")]
    [InlineData("use-cycle", Severity.Error, "use-cycle.svg:3:2 (#front)", "The use of #other leads back to itself.", "Copy the shape instead.")]
    [InlineData("use-elsewhere", Severity.Error, "use-elsewhere.svg:3:2 (#front)", "The use names other.svg#front, which is not in this", "Copy the shape into the drawing;")]
    [InlineData("web-address", Severity.Error, "web-address.yaml:5:21 (pieces.front.outline)", "Found \"https://example.org/a.svg\"; drawings are read from this computer only.", "Save the drawing beside the job")]
    [InlineData("wrong-edge", Severity.Error, "wrong-edge.yaml:5:53 (pieces.pocket.edges)", "pocket: There is no edge A-C.", "The edges, counter-clockwise, are A-B, B-C,")]
    [InlineData("wrong-version", Severity.Error, "wrong-version.yaml:1:11 (nestmark)", "Found version \"2\" of the job file; this program", "Write nestmark: 1, or use a")]
    [InlineData("zero-width", Severity.Error, "zero-width.yaml:7:19 (cloths.shell.width)", "Found \"0\"; expected a length above zero.", "Write the length that is meant.")]
    public void Trouble_is_named_with_its_place_and_a_remedy(string name, Severity severity, string place, string what, string remedy)
    {
        JobReading reading = Read(name);
        Problem problem = reading.Problems[0];
        Assert.Equal(severity, problem.Severity);
        Assert.Equal(place, (problem.Where with { File = Path.GetFileName(problem.Where.File) }).ToString());
        Assert.StartsWith(what, problem.What, StringComparison.Ordinal);
        Assert.StartsWith(remedy, problem.Hint, StringComparison.Ordinal);
        Assert.Equal(reading.Problems.Any(one => one.Severity == Severity.Error), reading.Job is null);
    }

    // These are well-formed jobs; the rules of laying say why they cannot be cut so.
    [Theory]
    [InlineData("deeper-than-the-fold")]
    [InlineData("seam-apart")]
    [InlineData("single-on-folded")]
    public void Impossible_wishes_are_read_and_left_to_the_lay(string name)
    {
        JobReading reading = Read(name);
        Assert.Empty(reading.Problems);
        Assert.NotNull(reading.Job);
    }

    [Fact]
    public void Every_trouble_file_is_tested_here()
    {
        string[] tested = [.. typeof(TroubleTests).GetMethods()
            .SelectMany(method => method.GetCustomAttributesData())
            .Where(attribute => attribute.AttributeType == typeof(InlineDataAttribute))
            .Select(attribute => ((IReadOnlyList<System.Reflection.CustomAttributeTypedArgument>)attribute.ConstructorArguments[0].Value!)[0].Value as string)
            .OfType<string>()];
        string[] files = [.. Directory.GetFiles(Fixtures.PathOf("trouble"), "*.yaml").Select(Path.GetFileNameWithoutExtension).OfType<string>()];
        Assert.Empty(files.Except(tested));
    }

    [Fact]
    public void All_problems_are_told_at_once() =>
        Assert.Equal(["title", "units", "pieces"], Read("missing-keys").Problems.Select(problem => problem.Where.Item));

    private static JobReading Read(string name) => JobReader.Read(Fixtures.PathOf(Path.Combine("trouble", name + ".yaml")), new DiskFiles());
}
