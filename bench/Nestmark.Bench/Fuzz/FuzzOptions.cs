namespace Nestmark.Bench.Fuzz;

/// <summary>What <c>fuzz</c> was asked for.</summary>
/// <param name="Minutes">How long each reader runs.</param>
/// <param name="Only">Readers by name: job, svg, dxf, pdf; empty for all.</param>
/// <param name="Seed">First seed.</param>
/// <param name="Fixtures">Folder of good and bad files to start from.</param>
/// <param name="Folder">Where failing inputs are kept.</param>
internal sealed record FuzzOptions(double Minutes, IReadOnlySet<string> Only, long Seed, string Fixtures, string Folder);
