using System.Collections.Immutable;

namespace Nestmark.Nesting;

/// <summary>A rule that ties a point of a piece to another piece or to the print.</summary>
/// <param name="Text">As the user wrote it.</param>
/// <param name="First">The point that is tied.</param>
/// <param name="Target">To what.</param>
/// <param name="Second">The other point; only for <see cref="MatchTarget.Point"/>.</param>
/// <param name="Axes">In which directions, one or both; for the border <see cref="ClothAxis.Across"/>.</param>
public sealed record MatchRule(string Text, MatchPoint First, MatchTarget Target, MatchPoint? Second, ImmutableArray<ClothAxis> Axes);
