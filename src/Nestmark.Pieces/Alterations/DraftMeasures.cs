using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>What a draft measures along its outline: for saying what an alteration did.</summary>
/// <param name="AreaSquareMillimeters">Area inside the outline; of a half piece, the half.</param>
/// <param name="Edges">Its edges by name, with their lengths.</param>
public sealed record DraftMeasures(double AreaSquareMillimeters, ImmutableArray<(string Name, Length Length)> Edges)
{
    /// <summary>The measures of a draft.</summary>
    /// <exception cref="ArgumentException">The outline encloses nothing.</exception>
    public static DraftMeasures Of(PieceDraft draft)
    {
        SeamOutline outline = SeamOutline.Of(draft.Outline, draft.Corners)
            ?? throw new ArgumentException("The outline of a draft must enclose an area.", nameof(draft));
        return new DraftMeasures(
            Polygon.Of(outline.Points).AreaSquareMillimeters,
            [.. outline.Edges.Select(edge => (edge.Name, Length.FromMillimeters(edge.LengthMicrometers / 1000)))]);
    }
}
