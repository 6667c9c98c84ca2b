using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>What the raw ring passes at one point of the seam line.</summary>
/// <param name="Seam">The seam line's point.</param>
/// <param name="Points">The ring there, in order; empty where a corner beside it has cut it away.</param>
/// <param name="Feet">Square off the seam line before and after the point, where the allowance may be divided; <c>null</c> where it may not.</param>
internal sealed record RingStation(Vector Seam, ImmutableArray<Vector> Points, (Vector Before, Vector After)? Feet)
{
    /// <summary>The same with only those of its points whose number in the whole edge lies within bounds; not divided when it loses one.</summary>
    /// <param name="first">Number of its first point.</param>
    /// <param name="from">Least number kept.</param>
    /// <param name="to">First number no longer kept.</param>
    public RingStation Within(int first, int from, int to)
    {
        ImmutableArray<Vector> kept = [.. Points.Where((_, i) => first + i >= from && first + i < to)];
        return kept.Length == Points.Length ? this : new RingStation(Seam, kept, null);
    }
}
