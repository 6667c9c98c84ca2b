using Nestmark.Input.Quantities;

namespace Nestmark.Input;

/// <summary>The messages about stripes, borders and the rules of matching.</summary>
internal static class MatchFaults
{
    public static Fault ExpectedList() => new("Expected a list of rules.", "Write match: [front.side matches back.side lengthwise].");

    public static Fault RuleForm(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected a rule of matching.",
        "Write PIECE.POINT matches PIECE.POINT lengthwise (or crosswise, both ways), PIECE.POINT on a lengthwise bar (or between crosswise bars), or PIECE.POINT on the border.");

    public static Fault UnknownPiece(string piece, IReadOnlyCollection<string> pieces) =>
        new($"There is no piece \"{QuantityFaults.Shown(piece)}\" in this job.", Spelling.Suggest(piece, pieces));

    public static Fault UnknownPoint(string title, string point, IReadOnlyCollection<string> points) =>
        new($"{title} has no point \"{QuantityFaults.Shown(point)}\".", Spelling.Suggest(point, points));

    public static Fault SamePiece(string piece) => new($"Both points lie on {piece}.", "Name points of two pieces, or tie one point to a bar.");

    public static Fault TwoCloths(string first, string second) =>
        new($"The pieces are cut from two cloths, {first} and {second}.", "Match pieces of one cloth.");

    public static Fault NoRepeat(string cloth, string direction) =>
        new($"The cloth {cloth} has no repeat {direction} it.", $"Add repeat: {{ {direction}: 6 cm }} to the cloth.");

    public static Fault NoBorder(string cloth) => new($"The cloth {cloth} has no border.", "Add border: { edge: near, from: 4 cm, depth: 18 cm } to the cloth.");

    public static Fault EmptyRepeat() => new("A repeat needs a length along or across the cloth.", "Write repeat: { along: 6 cm } or repeat: { along: 6 cm, across: 8 cm }.");

    public static Fault EmptyBorder(string key) => new($"A border needs {key}.", "Write border: { edge: near, from: 4 cm, depth: 18 cm }.");
}
