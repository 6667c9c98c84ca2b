namespace Nestmark.Nesting.Search;

/// <summary>A lay from the greedy pass.</summary>
/// <param name="State">Where everything lies, without overlaps.</param>
/// <param name="Headings">Heading of each nap group.</param>
internal sealed record GreedyLay(LayState State, int[] Headings);
