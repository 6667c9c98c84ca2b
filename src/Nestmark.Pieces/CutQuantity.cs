using System.Globalization;

namespace Nestmark.Pieces;

/// <summary>How often a piece is cut for one garment, as "2", "1 pair" or "1 on fold". Count is 1 or more; <c>default</c> (count 0) is not valid.</summary>
public readonly record struct CutQuantity(int Count, CutKind Kind)
{
    /// <summary>Finished pieces of cloth for one garment: a pair counts two, a piece on the fold one.</summary>
    public int FinishedCount => Kind == CutKind.Pairs ? 2 * Count : Count;

    /// <summary>The trade's words for it.</summary>
    public override string ToString()
    {
        string count = Count.ToString(CultureInfo.InvariantCulture);
        return Kind switch
        {
            CutKind.Pairs => count + (Count == 1 ? " pair" : " pairs"),
            CutKind.OnFold => count + " on fold",
            _ => count,
        };
    }
}
