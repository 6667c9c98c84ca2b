namespace Nestmark.Nesting.NoFit;

/// <summary>Sorts the cells of a grid over a no-fit polygon: inside, outside, or passed by an edge.</summary>
internal static class CellKinds
{
    /// <summary>How far from a cell an edge may run and still count as passing it, in micrometers: more than single precision loses.</summary>
    private const double Margin = 4;

    /// <summary>The kinds of all cells, row by row from the lowest corner.</summary>
    /// <param name="fit">The no-fit polygon; the grid covers its bounds.</param>
    /// <param name="cells">Cells along each side.</param>
    public static CellKind[] Of(PairFit fit, int cells)
    {
        CellKind[] kinds = new CellKind[cells * cells];
        double width = (fit.MaxX - fit.MinX) / cells;
        double height = (fit.MaxY - fit.MinY) / cells;
        foreach ((double, double, double, double) edge in fit.EdgesFromCorner())
            MarkCrossed(kinds, cells, edge, width, height);
        for (int row = 0; row < cells; row++)
        {
            Span<CellKind> line = kinds.AsSpan(row * cells, cells);
            for (int column = 0; column < cells; column++)
            {
                if (line[column] == CellKind.Crossed)
                    continue;
                bool goesOn = column > 0 && line[column - 1] != CellKind.Crossed;
                line[column] = goesOn ? line[column - 1] : KindAt(fit, fit.MinX + (column + 0.5) * width, fit.MinY + (row + 0.5) * height);
            }
        }
        return kinds;
    }

    private static CellKind KindAt(PairFit fit, double x, double y) => fit.Contains(x, y) ? CellKind.Inside : CellKind.Outside;

    /// <summary>Marks the cells along an edge row by row, by the part of it that lies in the row.</summary>
    private static void MarkCrossed(CellKind[] kinds, int cells, (double FromX, double FromY, double ToX, double ToY) edge, double width, double height)
    {
        (double lowX, double lowY, double highX, double highY) = edge.FromY <= edge.ToY ? edge : (edge.ToX, edge.ToY, edge.FromX, edge.FromY);
        double slope = highY > lowY ? (highX - lowX) / (highY - lowY) : 0;
        int lastRow = CellOf(highY + Margin, height, cells);
        for (int row = CellOf(lowY - Margin, height, cells); row <= lastRow; row++)
        {
            double beginX = highY > lowY ? lowX + slope * (Math.Clamp(row * height - Margin, lowY, highY) - lowY) : lowX;
            double endX = highY > lowY ? lowX + slope * (Math.Clamp((row + 1) * height + Margin, lowY, highY) - lowY) : highX;
            int lastColumn = CellOf(Math.Max(beginX, endX) + Margin, width, cells);
            for (int column = CellOf(Math.Min(beginX, endX) - Margin, width, cells); column <= lastColumn; column++)
                kinds[row * cells + column] = CellKind.Crossed;
        }
    }

    private static int CellOf(double at, double size, int cells) => Math.Clamp((int)Math.Floor(at / size), 0, cells - 1);
}
