namespace Nestmark.Geometry.Curves;

/// <summary>Where a flattened curve goes through the points where tangents meet, instead of through points of the curve.</summary>
internal enum TangentTurns
{
    /// <summary>Nowhere: chords only.</summary>
    None,

    /// <summary>Where the curve turns left: it bulges out of a counter-clockwise outline.</summary>
    Left,

    /// <summary>Where the curve turns right: it bulges out of a clockwise outline.</summary>
    Right,
}
