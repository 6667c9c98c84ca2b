namespace Nestmark.Output.Tiles;

/// <summary>The words of a page map.</summary>
/// <param name="PageName">Name of the page.</param>
/// <param name="Garment">Title of the job.</param>
/// <param name="Cloth">The cloth and its lay.</param>
/// <param name="Pages">How many pages there are.</param>
/// <param name="MissingLetters">A note when letters cannot be printed; else empty.</param>
internal sealed record MapHeading(string PageName, string Garment, string Cloth, string Pages, string MissingLetters);
