namespace Nestmark.Cloths;

/// <summary>The cloth's direction rule.</summary>
public enum Nap
{
    /// <summary>Every piece may lie either way up.</summary>
    None,

    /// <summary>All pieces of one size lie the same way up; sizes may differ.</summary>
    BySize,

    /// <summary>Every piece lies the same way up.</summary>
    OneWay,
}
