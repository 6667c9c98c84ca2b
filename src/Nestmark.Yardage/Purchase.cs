using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>The cloth to buy for one marker.</summary>
/// <param name="LayLength">Length of the marker.</param>
/// <param name="WithEnds">Lay length and both ends.</param>
/// <param name="BeforeWash">That, widened for shrinkage: need / (1 - s).</param>
/// <param name="ToBuy">That, rounded up to the shop's step.</param>
/// <param name="Text">The length to buy in the job's own units, as "1.7 m" or "1 7/8 yd".</param>
/// <param name="OtherText">The same in the other system, rounded up to its usual step.</param>
/// <param name="Cost">Cost, or <c>null</c> without a price.</param>
/// <param name="Currency">Currency as the user wrote it; may be empty.</param>
public sealed record Purchase(
    Length LayLength, Length WithEnds, Length BeforeWash, Length ToBuy,
    string Text, string OtherText, decimal? Cost, string Currency);
