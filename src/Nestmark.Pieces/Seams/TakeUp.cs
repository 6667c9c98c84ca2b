using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>What is taken up on one side of a seam, so that it fits the other.</summary>
/// <param name="Kind">How.</param>
/// <param name="Side">Which side is taken up.</param>
/// <param name="Amount">By how much; <c>null</c> when a ratio is given, or when it is whatever fits.</param>
/// <param name="Ratio">Flat to finished, 1 or more, within the zone; <c>null</c> when an amount is given, or when it is whatever fits.</param>
/// <param name="From">Where it begins on the taken-up side; <c>null</c> at its start.</param>
/// <param name="To">Where it ends; <c>null</c> at its end.</param>
/// <remarks>Gathers of 1.5 to 3 : 1 are usual (references/trade.md 8, [STC]).</remarks>
public sealed record TakeUp(TakeUpKind Kind, SeamSide Side, Length? Amount, double? Ratio, ZoneEnd? From, ZoneEnd? To)
{
    /// <summary>Whether the side is taken up to whatever the other asks.</summary>
    public bool FitsItself => Amount is null && Ratio is null;
}
