namespace Nestmark.Pieces.Drafting;

/// <summary>Which edges of a skirt's panels run through the middle of the circle.</summary>
public enum CircleEdges
{
    /// <summary>The seam lines: the sewn skirt is exactly that part of a circle.</summary>
    SeamLine,

    /// <summary>The cut edges: each panel is cut as an exact part of a circle, and the seams take from it.</summary>
    CutLine,
}
