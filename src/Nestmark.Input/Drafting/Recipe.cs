using System.Collections.Immutable;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;

namespace Nestmark.Input.Drafting;

/// <summary>A piece that is drafted from measures once the pieces that it is measured along are there.</summary>
/// <param name="Shape">Its key in the job file.</param>
/// <param name="Item">The path of that key.</param>
internal abstract record Recipe(MapEntry Shape, string Item)
{
    /// <summary>How often it is cut, where the file says so.</summary>
    public required CutQuantity? Cut { get; init; }

    /// <summary>What it is made from.</summary>
    public abstract ImmutableArray<Measure> Measures { get; }

    /// <summary>Names of pieces that must be made before it.</summary>
    public virtual IEnumerable<string> Pieces => Measures.SelectMany(measure => measure.Pieces);

    /// <summary>The draft; every measure has its length.</summary>
    public abstract DraftingResult Draft(RecipeSite site);
}
