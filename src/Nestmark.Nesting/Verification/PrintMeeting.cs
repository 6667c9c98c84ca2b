namespace Nestmark.Nesting.Verification;

/// <summary>Where a point of a piece meets the print.</summary>
/// <param name="Place">On the flat cloth, micrometers along or across.</param>
/// <param name="Phase">From a bar, counted the way that the piece runs.</param>
/// <param name="Sign">Whether the piece runs forth or back there.</param>
internal readonly record struct PrintMeeting(long Place, long Phase, int Sign);
