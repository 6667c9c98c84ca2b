namespace Nestmark.Nesting.Search;

/// <summary>How crowded a shape makes the cells around it, for circles of one size.</summary>
/// <param name="Column">The first column, seen from the shape's origin.</param>
/// <param name="Row">The first row, likewise.</param>
/// <param name="Rows">Cells of a column.</param>
/// <param name="Values">The cells, column by column.</param>
internal sealed record CrowdPatch(int Column, int Row, int Rows, int[] Values)
{
    /// <summary>The column after the last one.</summary>
    public int EndColumn => Column + Values.Length / Rows;

    /// <summary>The row after the last one.</summary>
    public int EndRow => Row + Rows;
}
