using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>What a draft has to know of the cloth it is cut from, and how it speaks of lengths.</summary>
/// <param name="UsableWidth">Width left for pieces; above zero.</param>
/// <param name="Layers">1 for open cloth, 2 for cloth folded lengthwise.</param>
/// <param name="Say">A length in the job's units, as "11.1 cm".</param>
public sealed record DraftingCloth(Length UsableWidth, int Layers, Func<Length, string> Say)
{
    /// <summary>How far the lay reaches across the cloth.</summary>
    public Length Depth => UsableWidth / Layers;

    /// <summary>Whether it lies folded.</summary>
    public bool IsFolded => Layers == 2;
}
