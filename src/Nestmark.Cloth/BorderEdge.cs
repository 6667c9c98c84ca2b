namespace Nestmark.Cloths;

/// <summary>Along which edge of the cloth a border is printed.</summary>
public enum BorderEdge
{
    /// <summary>The near selvage.</summary>
    Near,

    /// <summary>The far selvage.</summary>
    Far,

    /// <summary>Both, as mirror images.</summary>
    Both,
}
