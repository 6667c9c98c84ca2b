using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Drafting;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>A piece in one size as the file describes it.</summary>
/// <param name="Draft">Its description, alterations made.</param>
/// <param name="Cloth">The cloth it names; empty takes the first.</param>
/// <param name="Keys">Where its keys stand.</param>
/// <param name="DrawnAt">Drawing and line, as "smock.svg:12"; empty for a shape in the job file.</param>
internal sealed record DraftedPiece(PieceDraft Draft, string Cloth, PieceKeys Keys, string DrawnAt)
{
    /// <summary>What it is drafted from; <c>null</c> for a drawn piece. Its draft then has no shape and no size yet.</summary>
    public Recipe? Recipe { get; init; }

    /// <summary>The piece before its alterations; <c>null</c> when there were none.</summary>
    public Piece? Before { get; init; }

    /// <summary>The draft it was made from.</summary>
    public PieceDraft? BeforeDraft { get; init; }

    /// <summary>What the alterations did.</summary>
    public ImmutableArray<PieceChange> Changes { get; init; } = [];

    /// <summary>Moves the piece before over the piece as made.</summary>
    public Point ShiftOfBefore(Piece made)
    {
        if (Before is null || BeforeDraft is null)
            return Point.Origin;
        var still = from corner in Draft.Corners
                    join old in BeforeDraft.Corners on corner.Letter equals old.Letter
                    join now in made.Corners on corner.Letter equals now.Letter
                    join then in Before.Corners on corner.Letter equals then.Letter
                    select (Moved: (corner.Place - old.Place).NormMicrometers, Shift: now.Place - then.Place);
        return still.OrderBy(pair => pair.Moved).Select(pair => pair.Shift).FirstOrDefault();
    }
}
