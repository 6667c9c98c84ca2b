namespace Nestmark.Output.Tiles;

/// <summary>The words on a page.</summary>
/// <param name="Name">The page's name.</param>
/// <param name="Below">What stands below it.</param>
internal sealed record TileWords(string Name, string Below);
