using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Nesting.Matching;

/// <summary>Which turns a piece may have that the print holds, and which way its coordinates then run.</summary>
internal static class HeldTurns
{
    /// <summary>Whether the rules of a piece bear a turn: square to the cloth, its grain as it was planned, and on an uneven print its held directions the same way round.</summary>
    public static bool Bear(Cloth cloth, PrintHold hold, Turn turn)
    {
        if (!turn.Angle.IsQuarterTurn || int.IsOddInteger(turn.Angle.QuarterTurns) != hold.IsAcross)
            return false;
        bool isEven = cloth.Repeat is not { Balance: PrintBalance.Uneven };
        return isEven || ((hold.Along is null || SignOf(turn, ClothAxis.Along) > 0) && (hold.Across is null || SignOf(turn, ClothAxis.Across) > 0));
    }

    /// <summary>1 where the piece's coordinate that lies in a direction of the cloth runs the same way, -1 where it runs back; quarter turns only.</summary>
    public static int SignOf(Turn turn, ClothAxis axis)
    {
        Point both = turn.Apply(new Point(1, 0)) + turn.Apply(new Point(0, 1));
        return (int)(axis == ClothAxis.Along ? both.X : both.Y);
    }
}
