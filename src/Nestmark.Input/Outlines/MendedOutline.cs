using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Input.Outlines;

/// <summary>An outline after mending.</summary>
/// <param name="Vertices">Simple; <c>default</c> when a finding is an error.</param>
/// <param name="Findings">What was done or stands in the way.</param>
internal sealed record MendedOutline(ImmutableArray<OutlineVertex> Vertices, ImmutableArray<Finding> Findings);
