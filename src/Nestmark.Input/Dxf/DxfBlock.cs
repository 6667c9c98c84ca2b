using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>A block: in a pattern file, a piece in one size.</summary>
internal sealed record DxfBlock(string Name, int Line, CurvePoint Base)
{
    public List<DxfEntity> Entities { get; } = [];

    /// <summary>Layouts and unnamed blocks.</summary>
    public bool IsInternal => Name.StartsWith('*');
}
