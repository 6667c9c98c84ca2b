using System.Collections.Immutable;
using Nestmark.Cloths;

namespace Nestmark.Nesting;

/// <summary>One way to spread a cloth and to share its pieces out over the layers.</summary>
/// <param name="Form">The form of lay.</param>
/// <param name="Sections">One task; of a mixed lay two, the folded section before the open one.</param>
public sealed record LayOption(LayForm Form, ImmutableArray<LayTask> Sections)
{
    /// <summary>What cannot lie in this way.</summary>
    public ImmutableArray<Unplaced> Impossible => [.. Sections.SelectMany(section => section.Impossible)];

    /// <summary>Everything to place, section by section.</summary>
    public ImmutableArray<Demand> Demands => [.. Sections.SelectMany(section => section.Demands)];
}
