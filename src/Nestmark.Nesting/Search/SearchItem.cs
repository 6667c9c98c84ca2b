namespace Nestmark.Nesting.Search;

/// <summary>A demand as the search sees it.</summary>
/// <param name="Ways">Its allowed turns.</param>
/// <param name="Group">Index of its nap group, or -1.</param>
/// <param name="Contact">Whether y is fixed at the fold.</param>
/// <param name="AreaSquareMicrometers">Of one layer of its cutting line.</param>
internal sealed record SearchItem(SearchWay[] Ways, int Group, FoldContact Contact, double AreaSquareMicrometers);
