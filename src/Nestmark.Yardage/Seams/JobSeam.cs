using System.Collections.Immutable;
using Nestmark.Pieces.Seams;

namespace Nestmark.Yardage.Seams;

/// <summary>A seam of a job.</summary>
/// <param name="Seam">What is joined to what.</param>
/// <param name="Where">Where the user's file says it.</param>
public sealed record JobSeam(Seam Seam, Place Where)
{
    /// <summary>The alterations that broke or mended it, size by size, in their order; empty where none did.</summary>
    public ImmutableArray<SeamTurn> Turns { get; init; } = [];
}
