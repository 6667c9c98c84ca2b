namespace Nestmark.Nesting.Search;

/// <summary>What a shape asks of <see cref="Crowding"/> and what it adds to it.</summary>
/// <param name="Probes">Where it asks, one for each of its largest circles.</param>
/// <param name="Patches">What it adds, one for each size of circle.</param>
internal sealed record CrowdShape(CrowdProbe[] Probes, CrowdPatch[] Patches);
