using System.Collections.Immutable;

namespace Nestmark.Input.Pdf;

/// <summary>How pages were found to lie.</summary>
/// <param name="Tiles">The pages.</param>
/// <param name="Guess">How they are trimmed and how far they overlap.</param>
/// <param name="Grids">Their places, one grid for each group that hangs together; entries count the tiles from 1, 0 for none.</param>
/// <param name="Meeting">How many lines tell so.</param>
internal sealed record TileFound(ImmutableArray<PdfSheet> Tiles, TileGuess Guess, ImmutableArray<ImmutableArray<ImmutableArray<int>>> Grids, int Meeting);
