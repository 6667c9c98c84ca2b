using Nestmark.Pieces.Seams;

namespace Nestmark.Yardage.Seams;

/// <summary>A seam of a job.</summary>
/// <param name="Seam">What is joined to what.</param>
/// <param name="Where">Where the user's file says it.</param>
public sealed record JobSeam(Seam Seam, Place Where);
