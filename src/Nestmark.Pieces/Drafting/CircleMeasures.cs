using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>What a circle skirt is made from.</summary>
public sealed record CircleMeasures
{
    /// <summary>Length of the sewn waist line; above zero.</summary>
    public required Length Waist { get; init; }

    /// <summary>From waist line to hem line; above zero.</summary>
    public required Length SkirtLength { get; init; }

    /// <summary>Part of a whole circle: above 0 up to 1.</summary>
    public required double CircleRatio { get; init; }

    /// <summary>Number of panels; <c>null</c> for as few as the cloth's width allows.</summary>
    public required int? Panels { get; init; }

    /// <summary>Allowance of the joined edges.</summary>
    public required Length Seam { get; init; }

    /// <summary>Allowance of the waist.</summary>
    public required Length WaistSeam { get; init; }

    /// <summary>Allowance of the hem.</summary>
    public required Length Hem { get; init; }

    /// <summary>Length of the slit in a whole circle of one panel; <c>null</c> for the usual one. Panels open in a seam instead.</summary>
    public Length? Opening { get; init; }

    /// <summary>Which edges run through the middle.</summary>
    public required CircleEdges Edges { get; init; }
}
