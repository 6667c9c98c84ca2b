using System.Globalization;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces;

/// <summary>Every fault of a draft, in words.</summary>
internal static class PieceFaults
{
    public static PieceFault TooLarge(PieceSubject subject) => Error(subject,
        "A place lies more than 100 m from the origin of the drawing.",
        "Check the units of the drawing.");

    public static PieceFault TooManyPoints(int count, int most) => Error(PieceSubject.Outline,
        string.Create(CultureInfo.InvariantCulture, $"The outline has {count} points; at most {most} are taken."),
        "Simplify the curve in the drawing program.");

    public static PieceFault NoArea() => Error(PieceSubject.Outline,
        "The outline encloses nothing: fewer than three different points, or all on one line.",
        "Draw a closed outline.");

    public static PieceFault TooLong() => Error(PieceSubject.Outline,
        "The outline is more than 900 m long.",
        "Check the units of the drawing, and that the outline is drawn once.");

    public static PieceFault CrossesItself() => Error(PieceSubject.Outline,
        "The outline crosses or touches itself.",
        "Draw it once around, without loops and without lines that lie on each other.");

    public static PieceFault NoCuttingLine() => Error(PieceSubject.Outline,
        "No single cutting line comes out of this outline with these allowances.",
        "Look for slits or points narrower than the allowance, or make the allowance smaller.");

    public static PieceFault OpeningClosed() => Note(PieceSubject.Outline,
        "Allowances meet across a narrow opening and close it: the cutting line runs past the opening.",
        "Make the allowance there smaller if the opening is to be cut out.");

    public static PieceFault CountBelowOne(int count) => Error(PieceSubject.Cut,
        $"A piece cannot be cut {count.ToString(CultureInfo.InvariantCulture)} times.",
        "Write a count of 1 or more.");

    public static PieceFault WidthOutOfRange(PieceSubject subject, string edge) => Error(subject,
        edge.Length == 0 ? "The seam allowance is below zero or above 50 cm." : $"The allowance of edge {edge} is below zero or above 50 cm.",
        "Write a width from 0 to 50 cm.");

    public static PieceFault LimitOutOfRange() => Error(PieceSubject.Seam,
        "The limit of corner points is not between 1 and 100 allowances.",
        "Leave it out for 2.5.");

    public static PieceFault NoSuchEdge(string name, string edges) => Error(PieceSubject.Edges,
        $"There is no edge {name}.",
        $"The edges, counter-clockwise, are {edges}.");

    public static PieceFault EdgeTwice(string name) => Error(PieceSubject.Edges,
        $"Edge {name} has two allowances.",
        "Keep one of them.");

    public static PieceFault FoldWithAllowance(string name) => Error(PieceSubject.Edges,
        $"Edge {name} lies on the fold and is not cut, so it has no allowance.",
        "Drop its allowance, or set it to 0.");

    public static PieceFault NothingAddedToCuttingLine() => Note(PieceSubject.Edges,
        "The outline is the cutting line, so the allowances of single edges are not added.",
        "Say that the outline is the seam line, or drop them.");

    /// <summary>What is to be said about a corner's allowance; <c>null</c> for nothing.</summary>
    public static PieceFault? OfCorner(JoinOutcome outcome, string corner) => outcome switch
    {
        JoinOutcome.MitredInstead => EndMitredInstead(corner),
        JoinOutcome.ReflectedOffCurve => ReflectedOffCurve(corner),
        _ => null,
    };

    private static PieceFault EndMitredInstead(string corner) => Note(PieceSubject.Edges,
        $"The allowance at corner {corner} has no room to end as asked; it ends in a plain point.",
        "Check the drawing there, or make the allowance narrower.");

    private static PieceFault ReflectedOffCurve(string corner) => Note(PieceSubject.Edges,
        $"The edge curves so much at corner {corner} that its allowance, turned up, ends more than 1 mm beside the piece.",
        "Turn it up once on the cloth and trim the end there, or make the allowance narrower.");

    public static PieceFault FoldMissing(string edges) => Error(PieceSubject.Fold,
        "The piece is cut on the fold, but no fold edge is given.",
        $"Draw the fold line, or name one of the edges {edges}.");

    public static PieceFault FoldNotWanted() => Error(PieceSubject.Fold,
        "A fold edge is given, but the piece is not cut on the fold.",
        "Write cut: 1 on fold, or drop the fold edge.");

    public static PieceFault NoSuchFoldEdge(string name, string edges) => Error(PieceSubject.Fold,
        $"There is no edge {name} to lie on the fold.",
        $"The edges, counter-clockwise, are {edges}.");

    public static PieceFault FoldWithoutLength() => Error(PieceSubject.Fold,
        "The fold line has no length.",
        "Draw it from one end of the fold edge to the other.");

    public static PieceFault FoldOffOutline(string edges) => Error(PieceSubject.Fold,
        "The fold line does not run along one edge of the outline within 1 mm.",
        $"Draw it along one of the edges {edges}.");

    public static PieceFault FoldNotStraight(string name) => Error(PieceSubject.Fold,
        $"Edge {name} bends more than 0.1 mm and cannot lie on a fold.",
        "Make it straight, or mark corners where the straight part begins and ends.");

    public static PieceFault FoldStraightened(string name) => Note(PieceSubject.Fold,
        $"Edge {name} bent by less than 0.1 mm; it is now straight.",
        "Nothing to do.");

    public static PieceFault FoldLengthened(string name) => Note(PieceSubject.Fold,
        $"The fold line is shorter than edge {name}; the whole edge lies on the fold.",
        "Mark corners where the fold begins and ends if only part of the edge is meant.");

    public static PieceFault AcrossFold() => Error(PieceSubject.Fold,
        "The piece reaches the fold line beside its fold edge, or lies on both sides of it.",
        "Draw half the piece, on one side of the fold line.");

    public static PieceFault AllowanceAcrossFold() => Error(PieceSubject.Fold,
        "The allowance of another edge reaches the fold line apart from the fold edge.",
        "Make that allowance narrower, or draw the edge farther from the fold line.");

    public static PieceFault GrainWithoutLength() => Error(PieceSubject.Grain,
        "The grainline has no length.",
        "Draw it as a line from its start to its end.");

    public static PieceFault GrainOffFold() => Error(PieceSubject.Grain,
        "The grainline is not parallel to the fold edge within 0.1 degrees.",
        "Draw it parallel to the fold edge, or leave it out.");

    public static PieceFault GrainFollowsFold() => Note(PieceSubject.Grain,
        "The grainline is not parallel to the fold edge; the fold edge decides how the piece lies.",
        "Leave the grainline out, or cut the piece without a fold.");

    public static PieceFault NotchOffOutline(string name) => Error(PieceSubject.Marks,
        name.Length == 0 ? "A notch lies more than 3 mm from the outline." : $"Notch {name} lies more than 3 mm from the outline.",
        "Draw it on the outline.");

    private static PieceFault Error(PieceSubject subject, string what, string hint) => new(subject, FaultWeight.Error, what, hint);

    private static PieceFault Note(PieceSubject subject, string what, string hint) => new(subject, FaultWeight.Note, what, hint);
}
