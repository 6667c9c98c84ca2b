using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations;

/// <summary>Gives the corners of a draft the letters that they have on the piece, so that alterations can keep them.</summary>
public static class Lettering
{
    /// <summary>The same draft, its outline counter-clockwise from the first corner on and its corners lettered.</summary>
    /// <exception cref="ArgumentException">The outline encloses nothing.</exception>
    public static PieceDraft Of(PieceDraft draft)
    {
        SeamOutline outline = SeamOutline.Of(draft.Outline, draft.Corners)
            ?? throw new ArgumentException("The outline of a draft must enclose an area.", nameof(draft));
        HashSet<Point> corners = [.. outline.Corners.Select(corner => corner.Place)];
        return draft with
        {
            Outline = [.. outline.Points.Select(point => new OutlineVertex(point, corners.Contains(point) ? VertexKind.Marked : VertexKind.Curve))],
            Corners = outline.Corners,
        };
    }
}
