using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>A job as read, before its pieces are made.</summary>
internal sealed record JobDraft(
    string Title, JobContext Context,
    ImmutableArray<DraftedPiece> Pieces, ImmutableArray<Cloth> Cloths, ImmutableArray<SizeCount> Sizes, ImmutableArray<Remnant> Remnants);
