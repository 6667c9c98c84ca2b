namespace Nestmark.Pieces.Making;

/// <summary>How the raw ring passes an inner bend that is too tight for its width.</summary>
internal enum TightBend
{
    /// <summary>Straight from one offset line to the other: few crossings, and right wherever the result is found to keep every allowance.</summary>
    Straight,

    /// <summary>Through the seam line: always right, with a crossing for every two neighbors in a tight curve.</summary>
    ThroughSeamLine,
}
