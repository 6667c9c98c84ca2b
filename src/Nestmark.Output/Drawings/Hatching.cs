using System.Collections.Immutable;

namespace Nestmark.Output.Drawings;

/// <summary>Fills a shape with slanting lines.</summary>
internal static class Hatching
{
    /// <summary>Lines at 45 degrees, rising to the right, that end on the rings; even-odd, so holes stay free.</summary>
    /// <param name="rings">Outer ring and holes.</param>
    /// <param name="spacingMillimeters">Distance between lines; above zero.</param>
    public static IEnumerable<ImmutableArray<Spot>> Of(ImmutableArray<ImmutableArray<Spot>> rings, double spacingMillimeters)
    {
        // A line at 45 degrees is where y - x is constant.
        double step = spacingMillimeters * Math.Sqrt(2);
        double[] rises = [.. rings.SelectMany(ring => ring).Select(Rise)];
        double last = rises.Max();
        for (double rise = (Math.Floor(rises.Min() / step) + 0.5) * step; rise < last; rise += step)
        {
            List<double> crossings = CrossingsOf(rings, rise);
            for (int i = 0; i + 1 < crossings.Count; i += 2)
                yield return [new(crossings[i], crossings[i] + rise), new(crossings[i + 1], crossings[i + 1] + rise)];
        }
    }

    private static List<double> CrossingsOf(ImmutableArray<ImmutableArray<Spot>> rings, double rise)
    {
        List<double> crossings = [];
        foreach (ImmutableArray<Spot> ring in rings)
        {
            for (int i = 0; i < ring.Length; i++)
            {
                Spot start = ring[i];
                Spot end = ring[(i + 1) % ring.Length];
                if (Rise(start) > rise != Rise(end) > rise)
                    crossings.Add(start.Toward(end, (rise - Rise(start)) / (Rise(end) - Rise(start))).XMillimeters);
            }
        }
        crossings.Sort();
        return crossings;
    }

    private static double Rise(Spot spot) => spot.YMillimeters - spot.XMillimeters;
}
