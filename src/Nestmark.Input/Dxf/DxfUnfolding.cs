using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>Puts what blocks hold where the drawing shows them, in millimeters; depth, number and size are bounded.</summary>
internal sealed class DxfUnfolding(DxfContent content, DxfProblems problems)
{
    private readonly List<string> _path = [];
    private int _segments;

    /// <summary>Whether the drawing unfolds to more than is read; the rest is left out.</summary>
    public bool IsFull { get; private set; }

    /// <summary>What a block draws, seen through a map from displacements from its base point.</summary>
    public List<DxfEntity> Of(DxfBlock block, AffineMap map)
    {
        List<DxfEntity> drawn = [];
        Enter(block, map, "0", drawn);
        return drawn;
    }

    /// <summary>What entities draw, seen through a map.</summary>
    /// <param name="entities">Of one block or of the model space.</param>
    /// <param name="map">To millimeters.</param>
    /// <param name="layer">Layer of those that say layer 0.</param>
    /// <param name="drawn">Where they are added.</param>
    public void Unfold(IEnumerable<DxfEntity> entities, AffineMap map, string layer, List<DxfEntity> drawn)
    {
        foreach (DxfEntity entity in entities)
        {
            if (IsFull)
                return;
            string own = entity.Layer == "0" ? layer : entity.Layer;
            DxfEntity mapped = entity.Mapped(map) with { Layer = own };
            if (!mapped.IsUsable)
                problems.Error(entity.Line, "", DxfFaults.BeyondLimit(entity.Type));
            else if (mapped is DxfInsert insert)
                Repeat(insert, drawn);
            else
                Add(mapped, drawn);
        }
    }

    private void Add(DxfEntity entity, List<DxfEntity> drawn)
    {
        drawn.Add(entity);
        Count(entity.SegmentCount, entity.Line);
    }

    private void Count(int segments, int line)
    {
        _segments += segments;
        if (_segments <= DxfLimits.MostSegments || IsFull)
            return;
        IsFull = true;
        problems.Error(line, "", DxfFaults.TooMuch($"{DxfLimits.MostSegments} segments in its blocks"));
    }

    private void Repeat(DxfInsert insert, List<DxfEntity> drawn)
    {
        if (content.Block(insert.Block) is not DxfBlock block)
        {
            problems.Error(insert.Line, "", DxfFaults.UnknownBlock(insert.Block));
            return;
        }
        for (int i = 0; i < (long)insert.Columns * insert.Rows && !IsFull; i++)
        {
            CurvePoint step = insert.ColumnStep * (i % insert.Columns) + insert.RowStep * (i / insert.Columns);
            Count(1, insert.Line);
            Enter(block, AffineMap.Shift(step.XMillimeters, step.YMillimeters).After(insert.Map), insert.Layer, drawn);
        }
    }

    private void Enter(DxfBlock block, AffineMap map, string layer, List<DxfEntity> drawn)
    {
        if (_path.Contains(block.Name) || _path.Count == DxfLimits.DeepestInsert)
        {
            problems.Error(block.Line, "", _path.Contains(block.Name) ? DxfFaults.InsertCycle(block.Name) : DxfFaults.InsertDepth());
            return;
        }
        _path.Add(block.Name);
        Unfold(block.Entities, map.After(AffineMap.Shift(-block.Base.XMillimeters, -block.Base.YMillimeters)), layer, drawn);
        _path.RemoveAt(_path.Count - 1);
    }
}
