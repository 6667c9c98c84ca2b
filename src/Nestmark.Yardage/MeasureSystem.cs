namespace Nestmark.Yardage;

/// <summary>The units that a job is written in, first in every text.</summary>
public enum MeasureSystem
{
    /// <summary>Millimeters, centimeters, meters.</summary>
    Metric,

    /// <summary>Inches and yards.</summary>
    Imperial,
}
