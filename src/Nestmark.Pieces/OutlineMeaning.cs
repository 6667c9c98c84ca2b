namespace Nestmark.Pieces;

/// <summary>Which line a drawn outline is.</summary>
public enum OutlineMeaning
{
    /// <summary>The line of stitching; seam allowance is added outside it.</summary>
    SeamLine,

    /// <summary>The line that is cut; nothing is added.</summary>
    CuttingLine,
}
