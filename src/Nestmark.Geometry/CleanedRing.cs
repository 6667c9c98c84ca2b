using System.Collections.Immutable;

namespace Nestmark.Geometry;

/// <summary>A ring after cleaning, and what was done to it.</summary>
/// <param name="Vertices">What is left.</param>
/// <param name="MergedCount">Vertices that lay on their neighbor.</param>
/// <param name="StraightCount">Vertices that lay on the line between their neighbors.</param>
/// <param name="Spikes">Tips of the spikes taken off.</param>
public sealed record CleanedRing(ImmutableArray<OutlineVertex> Vertices, int MergedCount, int StraightCount, ImmutableArray<Point> Spikes);
