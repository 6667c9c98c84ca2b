namespace Nestmark.Nesting.Search;

/// <summary>Along which lines the greedy pass looks for places.</summary>
internal enum GreedyLines
{
    /// <summary>At the edges of the lay, at even steps between, and at both ends of everything that lies there already: dense.</summary>
    AtEnds,

    /// <summary>At the edges of the lay and at even steps between: quick.</summary>
    Even,
}
