using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>What matching a print costs in cloth.</summary>
/// <param name="PlainLength">Length of cloth that the same pieces take without any rule of matching; searched for a third of the time, and never above the matched length.</param>
/// <param name="ExtraLength">What matching takes more.</param>
/// <param name="StackedPieces">Matched pieces that lie above each other along the plain lay, the most there are.</param>
/// <param name="RuleOfThumb">What the trade would add, or <c>null</c> where nothing repeats along the cloth.</param>
public sealed record MatchingCost(Length PlainLength, Length ExtraLength, int StackedPieces, Length? RuleOfThumb);
