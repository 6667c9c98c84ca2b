using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>The stripes, checks or plaid of a cloth, measured after the first wash.</summary>
/// <param name="Along">After how much of its length the print recurs; <c>null</c> when it does not change along the cloth.</param>
/// <param name="Across">The same across the cloth.</param>
/// <param name="Balance">Whether it may be turned and mirrored.</param>
/// <param name="FirstBar">From the near edge of the cloth, selvage included, to the middle of a lengthwise bar; <c>null</c> takes a bar in the middle of the width.</param>
public sealed record ClothRepeat(Length? Along, Length? Across, PrintBalance Balance, Length? FirstBar);
