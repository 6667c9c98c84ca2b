using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>What matching costs against plain cloth, beside the trade's rule of thumb.</summary>
public static class MatchingCosts
{
    /// <summary>Part of the allowance for the matched lay; the rest lays the same pieces without rules.</summary>
    internal const double MatchedPart = 0.75;

    /// <summary>One lengthwise repeat for each main piece that lies above others along the cloth, none when they lie side by side.</summary>
    /// <remarks>references/trade.md 6, [GALA]: 1 1/4 in × 2 = 2 1/2 in; [MTILT] and [ATD] count the main pieces in the same way, 4 in × 4 = 16 in and 6 in × 3 = 18 in.</remarks>
    /// <param name="repeat">Lengthwise repeat.</param>
    /// <param name="stackedPieces">0 or more; 1 is side by side.</param>
    public static Length RuleOfThumb(Length repeat, int stackedPieces) => stackedPieces < 2 ? Length.Zero : repeat * stackedPieces;

    /// <summary>The most placements of a kind that follow each other along a lay, none beside another. Those that only reach into each other's ends, by a quarter at most, follow each other.</summary>
    /// <param name="marker">The lay.</param>
    /// <param name="counts">Which placements count.</param>
    public static int Stacked(Marker marker, Func<Placement, bool> counts)
    {
        int stacked = 0;
        long end = long.MinValue;
        foreach (Box room in marker.Placements.Where(counts).Select(placement => placement.CuttingLine.Bounds).OrderBy(room => room.MaxX - room.Width / 4))
        {
            if (room.MinX + room.Width / 4 < end)
                continue;
            stacked++;
            end = room.MaxX - room.Width / 4;
        }
        return stacked;
    }

    /// <summary>The cost for a cloth that was laid with rules.</summary>
    /// <param name="work">What is cut from it.</param>
    /// <param name="matched">Its marker.</param>
    /// <param name="wording">How reasons speak of lengths.</param>
    /// <param name="lay">Lays options of the same cloth.</param>
    internal static MatchingCost Of(ClothWork work, Marker matched, LayWording wording, Func<ImmutableArray<LayOption>, Marker> lay)
    {
        Cloth plainCloth = work.Cloth with { Repeat = null, Border = null };
        ImmutableArray<PieceOrder> plainOrders = [.. work.Orders.Select(order => order with { Hold = null })];
        Marker plain = lay(LayChoices.For(plainCloth, plainOrders, wording));
        Length plainLength = plain.ClothLength < matched.ClothLength ? plain.ClothLength : matched.ClothLength;
        HashSet<string> main = [.. work.Orders.Where(order => order.Hold?.Along is not null).Select(order => order.Piece.Name)];
        int stacked = Stacked(plain, placement => main.Contains(placement.Piece.Name));
        Length? thumb = work.Cloth.Repeat?.Along is { } repeat && main.Count > 0 ? RuleOfThumb(repeat, stacked) : null;
        return new MatchingCost(plainLength, matched.ClothLength - plainLength, stacked, thumb);
    }
}
