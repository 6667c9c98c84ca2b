using Nestmark.Input.Quantities;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>The messages about the keys alter and grade.</summary>
internal static class AlterFaults
{
    public static Fault ExpectedList() => new("Expected a list of alterations.", "Write each on a line of its own: - { widen: front, by: 2, at: fold }.");

    public static Fault NoVerb(IReadOnlyCollection<string> verbs) =>
        new("Found no alteration here.", $"Begin with one of {string.Join(", ", verbs)}, as - {{ widen: front, by: 2, at: fold }}.");

    public static Fault SeveralVerbs(string first, string second) =>
        new($"Found two alterations in one: {first} and {second}.", "Write each on a line of its own.");

    public static Fault UnknownPiece(string piece, IReadOnlyCollection<string> pieces) =>
        new($"There is no piece \"{QuantityFaults.Shown(piece)}\" to alter.", Spelling.Suggest(piece, pieces));

    public static Fault NotInSizes(string piece, IEnumerable<string> sizes) =>
        new($"The piece {piece} is not there in the sizes {string.Join(", ", sizes)}.", "Name sizes in which it is cut, or leave sizes out.");

    public static Fault UnknownSize(string size, IReadOnlyCollection<string> sizes) =>
        new($"There is no size \"{QuantityFaults.Shown(size)}\".", Spelling.Suggest(size, sizes));

    public static Fault ExpectedNames() => new("Expected a name or a list of names.", "Write front, or [front, back].");

    public static Fault CornerForm(string text) =>
        new($"Found \"{QuantityFaults.Shown(text)}\"; expected the letter of a corner.", "Corners are lettered A, B, C counter-clockwise from the lowest left.");

    public static Fault LineForm() => new(
        "Expected a line.", "Write a distance as 20 from A, the title of a drawn line, or { from: C, to: 5 on A-B }.");

    public static Fault ShareForm(string text) =>
        new($"Found \"{QuantityFaults.Shown(text)}\"; expected from 1 to 50 slashes, or a list of them.", "Write slashes: 3, or slashes: [{ from: 5 on A-B, to: D }].");

    public static Fault SlashEnds() => new("The slashes have no ends.", "Write from: and to:, as from: A-B, to: C-D for even slashes, or from: 5 on A-B, to: D for one.");

    public static Fault EvenSlashEnds() => new("Even slashes begin along an edge and end along an edge or at a corner.", "Write from: A-B, to: C-D or from: A-B, to: D.");

    public static Fault NothingToMove() => new("Nothing says how far it moves.", "Write along: and across: the grain, or out: for an edge.");

    public static Fault CornerOrEdge() => new("Expected a corner or an edge, one of them.", "Write corner: C, or edge: B-C.");

    public static Fault TwoParts() => new("A split has two parts.", "Write into: { yoke: D, body: A }, each new name with a corner in that part.");

    public static Fault PartNameTaken(string name) => new($"There is a piece {name} already.", "Give the part another name.");

    public static Fault JoinForm() => new("A join takes two pieces and an edge of each.", "Write join: [front, yoke], along: [C-D, A-B].");

    public static Fault NoSeamPieces() => new("No piece is named above or below the seam.", "Write above: { bodice: A-B } and below: { skirt: C-D }.");

    public static Fault GradeForm() => new("Expected offsets along and across the grain.", "Write S: [-1, -0.5] for each size.");

    public static Fault GradeBaseMissing(string size) => new($"The base size {size} is not in the order.", "Write order: with every size from small to large.");

    public static Fault GradedAlready(string piece) =>
        new($"The outline of {piece} says {{size}}, so each size is drawn already.", "Name the base size's outline, or take the piece out of the grade table.");

    public static Fault BlendWithoutSize(string piece, string size) =>
        new($"The piece {piece} is not there in size {size}.", "Blend pieces that are drawn or graded by size.");

    public static Fault Refused(string title, string asked, AlterationFault fault, string largest) => new(
        $"{title} cannot be {asked}: {fault.What}",
        largest.Length > 0 ? $"The largest amount that works here is {largest}." : fault.Hint);
}
