using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>A piece in one size as the file draws it, sorted by what things are; millimeters.</summary>
/// <param name="Name">What a job calls it.</param>
/// <param name="Line">Where it begins in the file.</param>
internal sealed record DxfPiece(string Name, int Line)
{
    /// <summary>Name of its block; empty without one.</summary>
    public string Block { get; init; } = "";

    /// <summary>Its size as the file says it; empty where it says none.</summary>
    public string Size { get; init; } = "";

    /// <summary>Whether the file follows the pattern standards, so that its boundary is the cutting line.</summary>
    public required DxfKind Kind { get; init; }

    public List<SubPath> Boundary { get; } = [];

    public List<SubPath> SewLines { get; } = [];

    public List<SubPath> Grainlines { get; } = [];

    public List<SubPath> MirrorLines { get; } = [];

    /// <summary>Label, and the places of which the one nearest to the outline is meant.</summary>
    public List<(string Label, CurvePoint[] Places)> Notches { get; } = [];

    public List<(string Label, CurvePoint Place)> Marks { get; } = [];

    public List<(string Label, SubPath Run)> Lines { get; } = [];

    public List<CurvePoint> TurnPoints { get; } = [];

    public List<CurvePoint> CurvePoints { get; } = [];

    /// <summary>Texts of the form "KEY: value", in the order of the file.</summary>
    public List<(string Key, string Value)> Fields { get; } = [];

    /// <summary>How many lines are to be cut out inside; they are drawn.</summary>
    public int CutOuts { get; set; }

    /// <summary>The first value of a key; empty without one.</summary>
    public string Field(string key) => Fields.Find(field => field.Key == key).Value ?? "";
}
