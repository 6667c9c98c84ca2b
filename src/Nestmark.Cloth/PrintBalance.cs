namespace Nestmark.Cloths;

/// <summary>Whether a print looks the same turned round or mirrored.</summary>
/// <remarks>Test for an even plaid or stripe: references/trade.md 6 ([GW-108], [PNW187]).</remarks>
public enum PrintBalance
{
    /// <summary>Alike about the middle of each bar: it may be turned half round and mirrored.</summary>
    Even,

    /// <summary>Not so: every piece lies the same way up.</summary>
    Uneven,
}
