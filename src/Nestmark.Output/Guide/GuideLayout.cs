namespace Nestmark.Output.Guide;

/// <summary>How a guide sheet is arranged.</summary>
internal enum GuideLayout
{
    /// <summary>Paper upright, the lay above the table.</summary>
    Upright,

    /// <summary>Paper across, the lay above the table.</summary>
    Across,

    /// <summary>Paper across, the lay at the left, the table at the right.</summary>
    SideBySide,
}
