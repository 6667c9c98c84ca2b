namespace Nestmark.Pieces.Seams;

/// <summary>A take-up on two sides of known lengths: how much, where, and where a place of the taken-up side comes to lie.</summary>
internal sealed record TakeUpPlan(SeamSide Side, double FromMillimeters, double ToMillimeters, double AmountMillimeters, double FirstMillimeters, double SecondMillimeters)
{
    /// <summary>Length of the first side when sewn.</summary>
    public double FirstFinishedMillimeters => Side == SeamSide.First ? FirstMillimeters - AmountMillimeters : FirstMillimeters;

    /// <summary>Length of the second side when sewn.</summary>
    public double SecondFinishedMillimeters => Side == SeamSide.Second ? SecondMillimeters - AmountMillimeters : SecondMillimeters;

    /// <summary>Flat to finished within the zone; the longer to the shorter side where nothing is taken up.</summary>
    public required double Ratio { get; init; }

    /// <summary>The plan; without a take-up nothing is shortened.</summary>
    public static TakeUpPlan Of(TakeUp? takeUp, SideWalk first, SideWalk second)
    {
        double firstLength = first.LengthMillimeters;
        double secondLength = second.LengthMillimeters;
        if (takeUp is null)
        {
            double ratio = Math.Max(firstLength, secondLength) / Math.Max(0.001, Math.Min(firstLength, secondLength));
            return new TakeUpPlan(SeamSide.First, 0, firstLength, 0, firstLength, secondLength) { Ratio = ratio };
        }
        SideWalk taken = takeUp.Side == SeamSide.First ? first : second;
        (double from, double to) = ZoneOf(takeUp, taken);
        double amount = AmountOf(takeUp, to - from, taken.LengthMillimeters - (takeUp.Side == SeamSide.First ? secondLength : firstLength));
        return new TakeUpPlan(takeUp.Side, from, to, amount, firstLength, secondLength) { Ratio = (to - from) / Math.Max(0.001, to - from - amount) };
    }

    /// <summary>Where a place of a side lies on the finished seam.</summary>
    public double FinishedAlong(SeamSide side, double alongMillimeters)
    {
        if (side != Side || alongMillimeters <= FromMillimeters)
            return alongMillimeters;
        double zone = ToMillimeters - FromMillimeters;
        double inZone = Math.Min(alongMillimeters, ToMillimeters) - FromMillimeters;
        return alongMillimeters - (zone > 0 ? AmountMillimeters * inZone / zone : 0);
    }

    private static (double From, double To) ZoneOf(TakeUp takeUp, SideWalk side)
    {
        double from = takeUp.From is { } start ? side.AlongMillimeters(start) ?? 0 : 0;
        double to = takeUp.To is { } end ? side.AlongMillimeters(end) ?? side.LengthMillimeters : side.LengthMillimeters;
        return from <= to ? (from, to) : (to, from);
    }

    /// <summary>What is taken up; never more than the zone, and where it fits itself never more than is there.</summary>
    private static double AmountOf(TakeUp takeUp, double zoneMillimeters, double surplusMillimeters)
    {
        double wanted = takeUp.Amount?.TotalMillimeters
            ?? (takeUp.Ratio is { } ratio ? zoneMillimeters * (1 - 1 / ratio) : Math.Max(0, surplusMillimeters));
        return Math.Min(wanted, zoneMillimeters);
    }
}
