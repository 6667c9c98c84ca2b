using System.Numerics;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>The common step of all coordinates of a task. Shapes that fit each other exactly do so at whole steps.</summary>
internal static class Lattice
{
    /// <summary>The largest length that divides the edges of all bands, the gap and every corner in every turn; 1 when a turn is not a quarter turn or a print ties pieces.</summary>
    public static long StepOf(LayTask task)
    {
        if (task.Demands.Any(demand => demand.Hold is not null))
            return 1;
        long step = Divisor(task.Surface.Depth.Micrometers, task.Gap.Micrometers);
        foreach (LayBand band in task.Surface.Bands)
            step = Divisor(step, Divisor(band.Low.Micrometers, band.High.Micrometers));
        foreach (Demand demand in task.Demands)
        {
            if (demand.Turns.Any(turn => !turn.Angle.IsQuarterTurn))
                return 1;
            foreach (Point corner in demand.Piece.CuttingLine.Outer)
                step = Divisor(step, Divisor(corner.X, corner.Y));
            if (step == 1)
                return 1;
        }
        return step;
    }

    /// <summary>The nearest place of whole steps.</summary>
    public static Point Nearest(Point place, long step) => new(Nearest(place.X, step), Nearest(place.Y, step));

    private static long Nearest(long value, long step) => (long)Math.Round(value / (double)step) * step;

    private static long Divisor(long first, long second) => (long)BigInteger.GreatestCommonDivisor(first, second);
}
