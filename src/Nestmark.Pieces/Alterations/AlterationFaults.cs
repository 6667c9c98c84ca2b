namespace Nestmark.Pieces.Alterations;

/// <summary>Every reason why an alteration cannot be made, in words.</summary>
internal static class AlterationFaults
{
    private const string Smaller = "Write a smaller amount.";

    public static AlterationFault TooFar() => new("The piece would reach more than 100 m from the origin of its drawing.", Smaller);

    public static AlterationFault CrossesItself() => new("The outline would cross or touch itself.", Smaller);

    public static AlterationFault EdgeVanishes(string edge) => new($"Nothing would be left of edge {edge}.", Smaller);

    public static AlterationFault FoldTurned(string edge) => new(
        $"The fold edge {edge} would no longer run as it did.", "Keep corners on the fold where they are across the grain, or complete the piece first.");

    public static AlterationFault OverFold() => new("The piece would reach over its fold.", Smaller);

    public static AlterationFault CornerTakenOut(string letter) => new(
        $"Corner {letter} lies in the strip that would be taken out.", "Take out less, or at another line.");

    public static AlterationFault NothingBeyond() => new("The strip that would be taken out reaches past the end of the piece.", "Take out less, or at another line.");

    public static AlterationFault NoSuchCorner(string letter, string letters) => new($"There is no corner {letter}.", $"The corners, counter-clockwise, are {letters}.");

    public static AlterationFault NoSuchEdge(string edge, string edges) => new($"There is no edge {edge}.", $"The edges, counter-clockwise, are {edges}.");

    public static AlterationFault NoSuchPlace(string name, string letters) => new(
        $"There is no corner, mark or notch {name}.", $"Corners are {letters}; a place on an edge is written 5 on A-B or middle of A-B.");

    public static AlterationFault NoSuchLine(string label, string labels) => new(
        $"No line {label} is drawn on the piece.",
        labels.Length == 0 ? "Give the line in the drawing a title, or write a distance as 20 from A." : $"Lines with a title: {labels}. A distance is written 20 from A.");

    public static AlterationFault BeyondEdge(string edge) => new($"The distance is longer than edge {edge}.", "Write a distance within the edge.");

    public static AlterationFault LineWithoutLength() => new("Both ends of the line are one place.", "Name two different places.");

    public static AlterationFault LineMisses() => new("The line does not cross the piece.", "Check the distance and the corner that it is taken from.");

    public static AlterationFault LineAlongWay() => new(
        "The line runs the way in which the piece would be moved apart.", "Lengthen across a line, and widen beside one.");

    public static AlterationFault CrossesOften(int crossings) => new(
        $"The line crosses the outline {crossings.ToString(System.Globalization.CultureInfo.InvariantCulture)} times; it must cross twice.", "Choose a line that goes through one part of the piece.");

    public static AlterationFault NotOnFold() => new("The piece is not cut on the fold.", "Name a line, as 8 from A, or complete nothing where nothing is half.");

    public static AlterationFault SlashOutside() => new("The slash leaves the piece on its way.", "Choose ends between which the piece lies.");

    public static AlterationFault SlashThroughFold() => new("The slash would open the fold edge.", "Slash beside the fold, or widen at the fold.");

    public static AlterationFault TooWideForPivot() => new("The slash is too short to be opened so far about its end.", Smaller);

    public static AlterationFault SidesMiss(string edge) => new(
        $"The edges beside {edge} do not meet it where it would go.", "Move it less, or write keep: length.");

    public static AlterationFault SeamAlongGrain(string edge) => new($"Edge {edge} runs along the grain and cannot be raised or lowered.", "Name the edge across the grain, or move the edge outward.");

    public static AlterationFault EdgesDiffer(string first, string second, double millimeters) => new(
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"The edges {first} and {second} do not lie on each other: they are {millimeters:0.#} mm apart somewhere."),
        "Join along edges of the same length and shape.");

    public static AlterationFault FoldsDoNotMeet() => new("The folds of the two pieces do not run on in one line.", "Join pieces whose fold edges meet, or complete them first.");

    public static AlterationFault SamePart(string letter, string other) => new(
        $"The corners {letter} and {other} lie in the same part.", "Name one corner of each part.");

    public static AlterationFault CornerOnLine(string letter) => new($"Corner {letter} lies on the line.", "Name a corner that lies clearly in the part.");

    public static AlterationFault GradeLost(string size) => new($"The size {size} has no offsets and none on both sides of it.", "Add its offsets, or write between: even with sizes on both sides.");

    public static AlterationFault OtherCorners(string size, string letters) => new(
        $"The outline of size {size} has the corners {letters}, and not those of this size.", "Blend outlines with the same corners.");

    public static AlterationFault EndsDoNotFit(string edge) => new(
        $"The strip along edge {edge} cannot be ended so.", "Make it narrower, or write ends: square.");
}
