using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Input.Alterations;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input;

/// <summary>A job as read, before its pieces are made.</summary>
internal sealed record JobDraft(
    string Title, JobContext Context,
    ImmutableArray<DraftedPiece> Pieces, ImmutableArray<Cloth> Cloths, ImmutableArray<SizeCount> Sizes, ImmutableArray<Remnant> Remnants)
{
    /// <summary>Seams as read; their edges are looked up once the pieces are made.</summary>
    public ImmutableArray<JobSeam> Seams { get; init; } = [];

    /// <summary>How the alterations went.</summary>
    public AlterHistory History { get; init; } = AlterHistory.None;

    /// <summary>Names of all pieces in the file, also of those that could not be read.</summary>
    public ImmutableArray<string> PieceNames { get; init; } = [];

    /// <summary>The rules of matching.</summary>
    public ImmutableArray<MatchDraft> Matches { get; init; } = [];
}
