using Nestmark.Geometry;

namespace Nestmark.Yardage;

/// <summary>How much of the cloth that is bought ends up in pieces: efficiency, less selvages, ends, and what rounding up leaves over.</summary>
/// <remarks>Fabric utilisation in references/trade.md 7.1 [DIAN]: efficiency × L/(L+e) × usable width/full width.</remarks>
public static class Utilization
{
    /// <summary>The chain of losses.</summary>
    /// <param name="efficiencyRatio">Efficiency of the marker, 0 to 1.</param>
    /// <param name="layLength">Length of the marker, above zero.</param>
    /// <param name="clothLength">Length of cloth that the lay takes, both ends included; not below the lay length.</param>
    /// <param name="usableWidth">Width that pieces may take, above zero.</param>
    /// <param name="fullWidth">Width from edge to edge; not below the usable width.</param>
    /// <exception cref="ArgumentException">A length or width is not within its range.</exception>
    public static double ChainRatio(double efficiencyRatio, Length layLength, Length clothLength, Length usableWidth, Length fullWidth)
    {
        if (layLength <= Length.Zero || clothLength < layLength)
            throw new ArgumentException("The cloth must be as long as the lay at least, and the lay above zero.", nameof(clothLength));
        if (usableWidth <= Length.Zero || fullWidth < usableWidth)
            throw new ArgumentException("The cloth must be as wide as its usable width at least, and that above zero.", nameof(fullWidth));
        return efficiencyRatio * (layLength.TotalMillimeters / clothLength.TotalMillimeters) * (usableWidth.TotalMillimeters / fullWidth.TotalMillimeters);
    }

    /// <summary>The part of the cloth to buy, as it is after the first wash, that the pieces take; 0 when nothing is bought.</summary>
    /// <param name="plan">The plan of one cloth.</param>
    public static double OfRatio(ClothPlan plan)
    {
        if (plan.Marker.Placements.IsEmpty)
            return 0;
        Length washed = Length.FromMillimeters(plan.Purchase.ToBuy.TotalMillimeters * (1 - plan.Cloth.LengthShrinkageRatio));
        Length length = washed < plan.Marker.ClothLength ? plan.Marker.ClothLength : washed;
        Length usable = plan.Marker.Surface.UsableWidth;
        Length full = Length.FromMillimeters(plan.Cloth.Width.TotalMillimeters * (1 - plan.Cloth.WidthShrinkageRatio));
        return ChainRatio(plan.Marker.EfficiencyRatio, plan.Marker.ClothLength, length, usable, full < usable ? usable : full);
    }
}
