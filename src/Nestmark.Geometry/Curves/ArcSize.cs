namespace Nestmark.Geometry.Curves;

/// <summary>Which of the two parts of an ellipse between two points is meant.</summary>
public enum ArcSize
{
    /// <summary>The part of half a turn or less.</summary>
    Small,

    /// <summary>The part of half a turn or more.</summary>
    Large,
}
