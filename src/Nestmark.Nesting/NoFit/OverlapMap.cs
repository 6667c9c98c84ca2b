using System.Runtime.CompilerServices;

namespace Nestmark.Nesting.NoFit;

/// <summary>How severely two shapes overlap at any place inside their no-fit polygon, looked up between the nodes of a grid.</summary>
/// <remarks>
/// The severity is the root of <see cref="CircleCover.OverlapWith"/>, in micrometers. It is worked out at the nodes and mixed from the four around a place.
/// Whether a place lies inside at all is known for cells that no edge passes; in the others the polygon is asked.
/// </remarks>
internal sealed class OverlapMap
{
    /// <summary>Cells along each side.</summary>
    public const int Cells = 24;

    private const int Nodes = Cells + 1;

    private readonly PairFit _fit;
    private readonly double _minX;
    private readonly double _minY;
    private readonly float _cellsPerX;
    private readonly float _cellsPerY;
    private readonly float[] _severities = new float[Nodes * Nodes];
    private readonly CellKind[] _kinds;

    /// <param name="fit">The no-fit polygon.</param>
    /// <param name="still">Circles of the still shape.</param>
    /// <param name="moving">Circles of the moving one.</param>
    public OverlapMap(PairFit fit, CircleCover still, CircleCover moving)
    {
        _fit = fit;
        (_minX, _minY) = (fit.MinX, fit.MinY);
        double width = (fit.MaxX - fit.MinX) / Cells;
        double height = (fit.MaxY - fit.MinY) / Cells;
        (_cellsPerX, _cellsPerY) = ((float)(1 / width), (float)(1 / height));
        for (int row = 0; row < Nodes; row++)
        {
            for (int column = 0; column < Nodes; column++)
                _severities[row * Nodes + column] = MathF.Sqrt(still.OverlapWith(moving, _minX + column * width, _minY + row * height));
        }
        _kinds = CellKinds.Of(fit, Cells);
    }

    /// <summary>Severity at a place, above 0 where the shapes overlap; 0 outside the no-fit polygon.</summary>
    public float At(double x, double y)
    {
        float column = (float)(x - _minX) * _cellsPerX;
        float row = (float)(y - _minY) * _cellsPerY;
        if (!(column >= 0 && row >= 0 && column < Cells && row < Cells))
            return 0;
        CellKind kind = _kinds[(int)row * Cells + (int)column];
        return kind == CellKind.Outside || (kind == CellKind.Crossed && !_fit.Contains(x, y)) ? 0 : Mixed(column, row);
    }

    /// <summary>Severity at a place known to lie inside.</summary>
    public float Inside(double x, double y)
    {
        const float Last = Cells - 0.001f;
        return Mixed(Math.Clamp((float)(x - _minX) * _cellsPerX, 0, Last), Math.Clamp((float)(y - _minY) * _cellsPerY, 0, Last));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private float Mixed(float column, float row)
    {
        int node = (int)row * Nodes + (int)column;
        float partX = column - (int)column;
        float partY = row - (int)row;
        float[] severities = _severities;
        float low = severities[node] + partX * (severities[node + 1] - severities[node]);
        float high = severities[node + Nodes] + partX * (severities[node + Nodes + 1] - severities[node + Nodes]);
        return low + partY * (high - low);
    }
}
