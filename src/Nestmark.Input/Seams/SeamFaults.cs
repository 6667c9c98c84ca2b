using Nestmark.Input.Quantities;

namespace Nestmark.Input.Seams;

/// <summary>The messages about seams and what is measured along edges.</summary>
internal static class SeamFaults
{
    public static Fault ListForm() => new("Expected a list of seams.", "Write seams: [{ join: [front.B-C, back.B-C] }].");

    public static Fault JoinForm() => new(
        "Expected the two sides of the seam.", "Write join: [front.B-C, back.B-C], the corners in the order in which they meet.");

    public static Fault TermForm(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected edges of a piece, or a length.",
        "Write front.A-B, a run as front.A-B-C, a sum as front.D-E + back.E-D, or 2 x front.A-B.");

    public static Fault TimesZero(string text) => new($"Found \"{QuantityFaults.Shown(text)}\", which counts nothing.", "Write 2 x front.A-B, or leave the count out.");

    public static Fault UnknownPiece(string name, IReadOnlyCollection<string> names) =>
        new($"There is no piece \"{QuantityFaults.Shown(name)}\" in this job.", Spelling.Suggest(name, names));

    public static Fault NoSuchRun(string title, string run, string edges) => new(
        $"{title} has no run of edges {run}.", $"Its edges, counter-clockwise, are {edges}; a run goes from corner to neighboring corner one way round.");

    public static Fault RunOnFold(string title, string edge) => new(
        $"{title}: the edge {edge} lies on the fold and is not sewn.", "Name the edges that are sewn.");

    public static Fault NoSize(string name, string size) => new(
        $"{name} is not there in size {size}.", "Let every piece of the seam be drawn in all sizes of the job, or in none.");

    public static Fault TakeUpForm(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected how much is taken up.", "Write a length as 12 mm, a ratio as 1.5 to 1, a part as 8 %, or to fit.");

    public static Fault RatioRange(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected a ratio from 1 to 10.", "Write flat to finished, as 1.5 to 1.");

    public static Fault TwoTakeUps(string first, string second) => new($"The seam has both {first} and {second}.", "Keep one of ease, gather and pleat.");

    public static Fault WithoutTakeUp(string key) => new($"The key {key} says where something is taken up, but nothing is.", "Add ease, gather or pleat, or take it out.");

    public static Fault BetweenForm() => new("Expected where the zone begins and where it ends.", "Write between: [notch 1, notch 2], names of notches, or lengths from the start.");

    public static Fault NoSuchNotch(string text, string notches) => new(
        $"There is no notch \"{QuantityFaults.Shown(text)}\" on the side that is taken up.", notches.Length == 0 ? "Give lengths from its start." : $"There are: {notches}.");

    public static Fault ToleranceRange(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected a length above zero, at most 5 cm.", "Leave it out for 3 mm.");
}
