namespace Nestmark.Nesting.NoFit;

/// <summary>A shape as one of the distinct ones, mirrored.</summary>
/// <param name="Base">Index of the distinct shape.</param>
/// <param name="Mirroring">How it is mirrored.</param>
internal readonly record struct Posture(int Base, Mirroring Mirroring);
