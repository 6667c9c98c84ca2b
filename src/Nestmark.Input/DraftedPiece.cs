using Nestmark.Input.Drafting;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>A piece in one size as the file describes it.</summary>
/// <param name="Draft">Its description.</param>
/// <param name="Cloth">The cloth it names; empty takes the first.</param>
/// <param name="Keys">Where its keys stand.</param>
/// <param name="DrawnAt">Drawing and line, as "smock.svg:12"; empty for a shape in the job file.</param>
internal sealed record DraftedPiece(PieceDraft Draft, string Cloth, PieceKeys Keys, string DrawnAt)
{
    /// <summary>What it is drafted from; <c>null</c> for a drawn piece. Its draft then has no shape and no size yet.</summary>
    public Recipe? Recipe { get; init; }
}
