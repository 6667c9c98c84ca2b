using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>A block shown somewhere, perhaps in rows and columns.</summary>
/// <param name="Layer">Its layer.</param>
/// <param name="Line">Its line.</param>
/// <param name="Block">Name of the block.</param>
/// <param name="Map">Where a displacement from the block's base point goes.</param>
internal sealed record DxfInsert(string Layer, int Line, string Block, AffineMap Map) : DxfEntity("INSERT", Layer, Line)
{
    public int Columns { get; init; } = 1;

    public int Rows { get; init; } = 1;

    public CurvePoint ColumnStep { get; init; }

    public CurvePoint RowStep { get; init; }

    public override bool IsUsable => IsNear(new CurvePoint(Map.XMillimeters, Map.YMillimeters));

    public override DxfEntity Mapped(AffineMap map) => this with
    {
        Map = map.After(Map),
        ColumnStep = map.ApplyToVector(ColumnStep),
        RowStep = map.ApplyToVector(RowStep),
    };
}
