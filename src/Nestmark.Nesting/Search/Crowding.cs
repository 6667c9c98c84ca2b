using System.Numerics;

namespace Nestmark.Nesting.Search;

/// <summary>How crowded the lay is: about how much a shape would overlap the others at any place, so quickly that the best of many places can be asked for in earnest.</summary>
/// <remarks>
/// A grid over the lay holds, for circles of three sizes, what <see cref="LargestCircles"/> of all items make of a circle with its middle in a cell:
/// how deep it overlaps them times the smaller radius, times the size of their shape. An item that moves is taken out of the cells around it and put into others.
/// A shape sums up the cells that its own circles come to lie in. Weights of pairs are left out, and places are those of the nearest cells.
/// </remarks>
internal sealed class Crowding
{
    /// <summary>Sizes of circles, each half of the one before.</summary>
    private const int Sizes = 3;

    /// <summary>Cells along a shape of mean size.</summary>
    private const double CellsPerShape = 5;

    /// <summary>Most cells across the lay, or the grid of many small pieces on wide cloth would be far larger than what it saves.</summary>
    private const int MostRows = 200;

    /// <summary>What an overlap of one square cell counts.</summary>
    private const double Unit = 256;

    private readonly SearchProblem _problem;
    private readonly double _largest;
    private readonly int _rows;
    private readonly int _columnLength;
    private readonly CrowdShape?[] _shapes;
    private readonly int[] _shapeOf;
    private readonly int[] _columnOf;
    private readonly int[] _rowOf;
    private int[] _cells = [];
    private int _columns;

    /// <param name="problem">What is laid; nothing lies anywhere until it is looked at.</param>
    public Crowding(SearchProblem problem)
    {
        _problem = problem;
        CellsPerMicrometer = Math.Min(CellsPerShape / problem.MeanSizeMicrometers, MostRows / problem.DepthMicrometers);
        _largest = Enumerable.Range(0, problem.ShapeCount).Max(shape => problem.Circles.Of(shape).First().Radius) * CellsPerMicrometer;
        _rows = (int)(problem.DepthMicrometers * CellsPerMicrometer) + 2;
        _columnLength = Sizes * _rows;
        _shapes = new CrowdShape?[problem.ShapeCount];
        _shapeOf = new int[problem.Items.Length];
        _columnOf = new int[problem.Items.Length];
        _rowOf = new int[problem.Items.Length];
        Array.Fill(_shapeOf, -1);
    }

    /// <summary>Factor from micrometers to what places are given in here.</summary>
    public double CellsPerMicrometer { get; }

    /// <summary>Takes over where everything lies; pieces that are not placed (way -1) are not there.</summary>
    public void Look(LayState state)
    {
        int columns = (int)(state.Length * CellsPerMicrometer) + 2;
        if (columns > _columns)
            Widen(columns);
        for (int item = 0; item < _problem.PieceCount; item++)
        {
            if (state.Way[item] >= 0)
                Put(item, state.Way[item], state.X[item], state.Y[item]);
            else
                Lift(item);
        }
    }

    /// <summary>Takes an item away, if it is there.</summary>
    public void Lift(int item)
    {
        if (_shapeOf[item] < 0)
            return;
        Add(item, -1);
        _shapeOf[item] = -1;
    }

    /// <summary>Puts an item somewhere, in one of its ways, in micrometers.</summary>
    public void Put(int item, int way, double x, double y)
    {
        int shape = _problem.Items[item].Ways[way].Shape;
        int column = (int)Math.Round(x * CellsPerMicrometer);
        int row = (int)Math.Round(y * CellsPerMicrometer);
        if (_shapeOf[item] == shape && _columnOf[item] == column && _rowOf[item] == row)
            return;
        Lift(item);
        (_shapeOf[item], _columnOf[item], _rowOf[item]) = (shape, column, row);
        Add(item, 1);
    }

    /// <summary>A shape, made ready when first asked for.</summary>
    public CrowdShape ShapeOf(int shape) => _shapes[shape] ??= Made(shape);

    /// <summary>How crowded a shape would be, at least 0.</summary>
    /// <param name="shape">The shape; inside the lay, or what is outside does not count.</param>
    /// <param name="x">Place of its origin along the lay, in cells.</param>
    /// <param name="y">Across, likewise.</param>
    public int At(CrowdShape shape, float x, float y)
    {
        int[] cells = _cells;
        int sum = 0;
        foreach (ref readonly CrowdProbe probe in shape.Probes.AsSpan())
        {
            int cell = (int)(x + probe.X) * _columnLength + (int)(y + probe.Y) + probe.Offset;
            if ((uint)cell < (uint)cells.Length)
                sum += cells[cell];
        }
        return sum;
    }

    /// <summary>Begins anew with more columns, since what lay beyond the last one was cut off.</summary>
    private void Widen(int columns)
    {
        _columns = columns;
        _cells = new int[columns * _columnLength];
        Array.Fill(_shapeOf, -1);
        for (int obstacle = _problem.PieceCount; obstacle < _problem.Items.Length; obstacle++)
            Put(obstacle, 0, 0, 0);
    }

    private void Add(int item, int times)
    {
        CrowdShape shape = ShapeOf(_shapeOf[item]);
        (int column, int row) = (_columnOf[item], _rowOf[item]);
        for (int size = 0; size < Sizes; size++)
        {
            CrowdPatch patch = shape.Patches[size];
            int fromRow = Math.Max(0, row + patch.Row);
            int count = Math.Min(_rows, row + patch.EndRow) - fromRow;
            if (count <= 0)
                continue;
            int skipped = fromRow - row - patch.Row;
            int end = Math.Min(_columns, column + patch.EndColumn);
            for (int at = Math.Max(0, column + patch.Column); at < end; at++)
                Add(_cells.AsSpan(at * _columnLength + size * _rows + fromRow, count), patch.Values.AsSpan((at - column - patch.Column) * patch.Rows + skipped, count), times);
        }
    }

    private static void Add(Span<int> cells, ReadOnlySpan<int> values, int times)
    {
        int i = 0;
        for (; i + Vector<int>.Count <= cells.Length; i += Vector<int>.Count)
            (new Vector<int>(cells[i..]) + times * new Vector<int>(values[i..])).CopyTo(cells[i..]);
        for (; i < cells.Length; i++)
            cells[i] += times * values[i];
    }

    private CrowdShape Made(int shape)
    {
        (double X, double Y, double Radius)[] circles =
            [.. _problem.Circles.Of(shape).Select(circle => (circle.X * CellsPerMicrometer, circle.Y * CellsPerMicrometer, circle.Radius * CellsPerMicrometer))];
        double factor = Unit * _problem.SizeOf(shape) / _problem.MeanSizeMicrometers;
        return new CrowdShape(
            [.. circles.Select(circle => new CrowdProbe((float)circle.X, (float)circle.Y, SizeNearest(circle.Radius) * _rows))],
            [.. Enumerable.Range(0, Sizes).Select(size => PatchOf(circles, _largest / (1 << size), factor))]);
    }

    private int SizeNearest(double radius) => Math.Clamp((int)Math.Round(Math.Log2(_largest / radius)), 0, Sizes - 1);

    private static CrowdPatch PatchOf((double X, double Y, double Radius)[] circles, double radius, double factor)
    {
        int column = (int)Math.Floor(circles.Min(circle => circle.X - circle.Radius - radius));
        int row = (int)Math.Floor(circles.Min(circle => circle.Y - circle.Radius - radius));
        int columns = Math.Max(1, (int)Math.Ceiling(circles.Max(circle => circle.X + circle.Radius + radius)) - column);
        int rows = Math.Max(1, (int)Math.Ceiling(circles.Max(circle => circle.Y + circle.Radius + radius)) - row);
        int[] values = new int[columns * rows];
        for (int i = 0; i < values.Length; i++)
        {
            double x = column + i / rows + 0.5;
            double y = row + i % rows + 0.5;
            double sum = 0;
            foreach ((double X, double Y, double Radius) circle in circles)
            {
                double away = Math.Sqrt((x - circle.X) * (x - circle.X) + (y - circle.Y) * (y - circle.Y));
                sum += Math.Max(0, radius + circle.Radius - away) * Math.Min(radius, circle.Radius);
            }
            values[i] = (int)Math.Round(factor * sum);
        }
        return new CrowdPatch(column, row, rows, values);
    }
}
