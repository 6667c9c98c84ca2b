using System.Collections.Immutable;

namespace Nestmark.Nesting;

/// <summary>How the print holds a piece in one direction.</summary>
/// <param name="Group">Pieces with the same name here are tied together and share a phase.</param>
/// <param name="RepeatMicrometers">The repeat.</param>
/// <param name="ShiftMicrometers">Added to a coordinate of the piece, gives its coordinate in the garment that the group is sewn to; the same coordinates meet the same place of the print.</param>
/// <param name="Phases">Where the garment's zero may lie in the repeat, from a bar; empty for anywhere.</param>
public sealed record AxisHold(string Group, long RepeatMicrometers, long ShiftMicrometers, ImmutableArray<long> Phases);
