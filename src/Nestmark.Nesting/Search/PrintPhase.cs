using System.Collections.Immutable;

namespace Nestmark.Nesting.Search;

/// <summary>A group of tied items and where it may lie in the repeat.</summary>
/// <param name="Axis">Direction of the cloth.</param>
/// <param name="Repeat">The repeat, micrometers.</param>
/// <param name="Allowed">The phases allowed; empty for any.</param>
/// <param name="Members">Indices of its items.</param>
internal sealed record PrintPhase(ClothAxis Axis, double Repeat, ImmutableArray<long> Allowed, ImmutableArray<int> Members);
