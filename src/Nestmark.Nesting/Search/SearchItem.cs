namespace Nestmark.Nesting.Search;

/// <summary>A demand as the search sees it, or an obstacle, which has one way and never moves.</summary>
/// <param name="Ways">Its allowed turns, each in the places it may lie.</param>
/// <param name="Group">Index of its nap group, or -1.</param>
/// <param name="Contact">Whether it lies on a fold.</param>
/// <param name="AreaSquareMicrometers">Of one layer of its cutting line; 0 for an obstacle.</param>
/// <param name="Kind">What it is.</param>
internal sealed record SearchItem(SearchWay[] Ways, int Group, FoldContact Contact, double AreaSquareMicrometers, ItemKind Kind);
