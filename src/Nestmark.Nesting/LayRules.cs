using Nestmark.Cloths;

namespace Nestmark.Nesting;

/// <summary>The rules of placing: which turns, sides, layers and fold contact each piece may have on a cloth.</summary>
public static class LayRules
{
    /// <summary>The task of laying some pieces on a cloth; pieces that cannot lie there are named with the reason and what would help.</summary>
    /// <param name="cloth">The cloth and how it is spread.</param>
    /// <param name="orders">In the order of the job.</param>
    public static LayTask TaskFor(Cloth cloth, IEnumerable<PieceOrder> orders) => throw new NotImplementedException(cloth.Name + orders.Count());
}
