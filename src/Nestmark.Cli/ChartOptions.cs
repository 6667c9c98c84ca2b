using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>What <c>nestmark chart</c> was asked for.</summary>
/// <param name="JobFile">Path of the job file.</param>
/// <param name="Folder">Where the files go.</param>
/// <param name="Cloth">Name of a cloth, "all", or empty for the first.</param>
/// <param name="Sizes">Sizes; empty for each of the job.</param>
/// <param name="Widths">Widths; empty for the usual ones of the job's units.</param>
/// <param name="Naps">Direction rules.</param>
/// <param name="Effort">For each cell; its threads are cells at the same time.</param>
/// <param name="Replacing">What happens to files of another origin.</param>
/// <param name="Talk">How much to say.</param>
internal sealed record ChartOptions(
    string JobFile, string Folder, string Cloth, ImmutableArray<string> Sizes, ImmutableArray<Length> Widths, ImmutableArray<Nap> Naps,
    Effort Effort, Replacing Replacing, Talk Talk);
