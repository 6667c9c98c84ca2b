using Nestmark.Geometry;

namespace Nestmark.Yardage.Charts;

/// <summary>A cell and what it needs.</summary>
/// <param name="Cell">The cell.</param>
/// <param name="Finding">What was found; where a stricter cell was laid shorter, its marker, which lies on this cloth just as well.</param>
/// <param name="LaidAs">The cell whose marker it is; mostly the cell itself.</param>
/// <param name="BeforeWash">Lay length with both ends, widened for the first wash.</param>
/// <param name="Metric">That, rounded up to the shop's step in meters.</param>
/// <param name="Imperial">That, rounded up to the shop's step in yards.</param>
public sealed record ChartEntry(ChartCell Cell, ChartFinding Finding, ChartCell LaidAs, Length BeforeWash, Length Metric, Length Imperial)
{
    /// <summary>Whether every piece can be cut.</summary>
    public bool CanBeCut => Finding.Unplaced.IsEmpty;

    /// <summary>Whether there is anything to cut.</summary>
    public bool IsEmpty => CanBeCut && Finding.LayLength == Length.Zero;
}
