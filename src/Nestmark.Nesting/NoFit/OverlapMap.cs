using System.Runtime.CompilerServices;

namespace Nestmark.Nesting.NoFit;

/// <summary>How severely two shapes overlap at any place inside their no-fit polygon, looked up between the nodes of a grid.</summary>
/// <remarks>
/// The severity is the root of <see cref="CircleCover.OverlapWith"/>. It is worked out at the nodes around cells that reach inside, and mixed from the four around a place.
/// Whether a place lies inside at all is known for cells that no edge passes; in the others the polygon is asked.
/// A long lay has thousands of these and a search jumps between them, so each is kept small, and near what is read with it:
/// one number of 16 bits holds the severity at a node and the kind of the cell that begins there.
/// </remarks>
internal sealed class OverlapMap
{
    /// <summary>Cells along each side.</summary>
    public const int Cells = 24;

    private const int Nodes = Cells + 1;
    private const int KindShift = 14;
    private const int Highest = (1 << KindShift) - 1;

    private Grid _grid;

    /// <param name="fit">The no-fit polygon.</param>
    /// <param name="still">Circles of the still shape.</param>
    /// <param name="moving">Circles of the moving one.</param>
    public OverlapMap(PairFit fit, CircleCover still, CircleCover moving)
    {
        Fit = fit;
        double width = (fit.MaxX - fit.MinX) / Cells;
        double height = (fit.MaxY - fit.MinY) / Cells;
        CellKind[] kinds = CellKinds.Of(fit, Cells);
        float[] severities = new float[Nodes * Nodes];
        for (int row = 0; row < Nodes; row++)
        {
            for (int column = 0; column < Nodes; column++)
            {
                if (IsAsked(kinds, row, column))
                    severities[row * Nodes + column] = MathF.Sqrt(still.OverlapWith(moving, fit.MinX + column * width, fit.MinY + row * height));
            }
        }
        UnitMicrometers = severities.Max() / Highest;
        for (int node = 0; node < severities.Length; node++)
        {
            (int row, int column) = Math.DivRem(node, Nodes);
            CellKind kind = row < Cells && column < Cells ? kinds[row * Cells + column] : CellKind.Outside;
            int severity = Math.Clamp((int)MathF.Round(severities[node] / UnitMicrometers), 1, Highest);
            _grid[node] = (ushort)((int)kind << KindShift | severity);
        }
    }

    /// <summary>The no-fit polygon; the grid covers its bounds.</summary>
    public PairFit Fit { get; }

    /// <summary>What <see cref="SeverityAt"/> counts in.</summary>
    public float UnitMicrometers { get; }

    /// <summary>Where the cell of a place lies.</summary>
    /// <param name="column">Of the place, in cells from the lowest corner: from 0 to below <see cref="Cells"/>.</param>
    /// <param name="row">As <paramref name="column"/>.</param>
    public CellKind KindAt(float column, float row) => (CellKind)(NodeOf(column, row) >> KindShift);

    /// <summary>Severity at a place, if it lies inside: above 0.</summary>
    /// <param name="column">As for <see cref="KindAt"/>.</param>
    /// <param name="row">As <paramref name="column"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public float SeverityAt(float column, float row)
    {
        ref ushort node = ref NodeOf(column, row);
        float partX = column - (int)column;
        float partY = row - (int)row;
        float low = Severity(node) + partX * (Severity(Unsafe.Add(ref node, 1)) - Severity(node));
        float high = Severity(Unsafe.Add(ref node, Nodes)) + partX * (Severity(Unsafe.Add(ref node, Nodes + 1)) - Severity(Unsafe.Add(ref node, Nodes)));
        return low + partY * (high - low);
    }

    /// <summary>Whether a node is a corner of a cell that a place inside the polygon may lie in.</summary>
    private static bool IsAsked(CellKind[] kinds, int row, int column)
    {
        for (int i = Math.Max(0, row - 1); i <= Math.Min(row, Cells - 1); i++)
        {
            for (int j = Math.Max(0, column - 1); j <= Math.Min(column, Cells - 1); j++)
            {
                if (kinds[i * Cells + j] != CellKind.Outside)
                    return true;
            }
        }
        return false;
    }

    private static int Severity(ushort node) => node & Highest;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private ref ushort NodeOf(float column, float row) => ref Unsafe.Add(ref Unsafe.As<Grid, ushort>(ref _grid), (int)row * Nodes + (int)column);

    /// <summary>The nodes row by row, inside the object.</summary>
    [InlineArray(Nodes * Nodes)]
    private struct Grid
    {
        private ushort _first;
    }
}
