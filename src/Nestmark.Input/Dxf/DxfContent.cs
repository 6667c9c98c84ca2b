namespace Nestmark.Input.Dxf;

/// <summary>What a file holds, in the drawing's units.</summary>
internal sealed class DxfContent
{
    private readonly List<DxfBlock> _blocks = [];
    private readonly Dictionary<string, DxfBlock> _byName = new(StringComparer.Ordinal);

    /// <summary>Variables of the header, with their first value.</summary>
    public Dictionary<string, string> Header { get; } = new(StringComparer.Ordinal);

    /// <summary>The blocks in the order of the file.</summary>
    public IReadOnlyList<DxfBlock> Blocks => _blocks;

    /// <summary>What is drawn in the model space, outside blocks.</summary>
    public List<DxfEntity> Entities { get; } = [];

    /// <summary>What was not understood.</summary>
    public DxfLeftOut LeftOut { get; } = new();

    /// <summary>How many points have the number of a grade rule.</summary>
    public int GradeMarks { get; set; }

    /// <summary>The first block of a name.</summary>
    public DxfBlock? Block(string name) => _byName.GetValueOrDefault(name);

    /// <summary>Adds a block.</summary>
    public void Add(DxfBlock block)
    {
        _blocks.Add(block);
        _byName.TryAdd(block.Name, block);
    }
}
