using Nestmark.Pieces.Seams;

namespace Nestmark.Yardage.Seams;

/// <summary>A seam as walked in one size.</summary>
/// <param name="Seam">The seam.</param>
/// <param name="Size">The size; empty when no piece of it has sizes.</param>
/// <param name="Walk">What walking found.</param>
/// <param name="Before">The same on the pieces before they were altered; <c>null</c> when none was, or its edges were not there.</param>
public sealed record SeamReport(JobSeam Seam, string Size, SeamWalk Walk, SeamWalk? Before)
{
    /// <summary>Name and size as people read them.</summary>
    public string Title => Size.Length == 0 ? Seam.Seam.Name : Seam.Seam.Name + " " + Size;

    /// <summary>The alterations that broke or mended it in this size, in their order.</summary>
    public IEnumerable<SeamTurn> Turns => Seam.Turns.Where(turn => turn.Size == Size);

    /// <summary>Whether an alteration took apart what met before.</summary>
    public bool BrokenByAlteration => Walk.Verdict == SeamVerdict.Apart && Before is { Verdict: not SeamVerdict.Apart };
}
