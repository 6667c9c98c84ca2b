namespace Nestmark.Nesting.Search;

/// <summary>Two items, the one with the lower number first.</summary>
internal readonly record struct ItemPair(int Item, int Other);
