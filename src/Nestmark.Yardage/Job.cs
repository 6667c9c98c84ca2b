using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;
using Nestmark.Yardage.Seams;

namespace Nestmark.Yardage;

/// <summary>What to cut from which cloths.</summary>
/// <param name="Title">The garment, as the user calls it.</param>
/// <param name="Source">Name of the job file, without its folder; part of every output's origin.</param>
/// <param name="System">Units first in texts.</param>
/// <param name="Pieces">In the order of the file; pieces with sizes grouped by piece, then by size.</param>
/// <param name="Cloths">In the order of the file; the first takes pieces that name none. One or more.</param>
/// <param name="Sizes">In the order of the file; a job without sizes has one entry with an empty size and one garment.</param>
public sealed record Job(
    string Title, string Source, MeasureSystem System,
    ImmutableArray<JobPiece> Pieces, ImmutableArray<Cloth> Cloths, ImmutableArray<SizeCount> Sizes)
{
    /// <summary>What is matched to what on printed cloth, in the order of the file.</summary>
    public ImmutableArray<MatchRule> Matches { get; init; } = [];

    /// <summary>Leftovers at hand, in the order of the file.</summary>
    public ImmutableArray<Remnant> Remnants { get; init; } = [];

    /// <summary>Seams that must meet, in the order of the file; their edges are there.</summary>
    public ImmutableArray<JobSeam> Seams { get; init; } = [];
}
