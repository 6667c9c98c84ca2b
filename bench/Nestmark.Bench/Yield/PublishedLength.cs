namespace Nestmark.Bench.Yield;

/// <summary>A length that a paper reports, in the instance's units.</summary>
internal readonly record struct PublishedLength(double Length);
