using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>Whether a cleaned-up cutting line still stands off every bend inside an edge by its allowance.</summary>
internal static class AllowanceCheck
{
    private const double RoundingMicrometers = 2;

    /// <summary>Looks square out of the middle of every stretch whose both ends lie inside an edge; corners have rules of their own.</summary>
    /// <param name="laid">The seam line's edges.</param>
    /// <param name="plan">Says whether there is a fold, beyond which nothing can stand.</param>
    /// <param name="cuttingLine">The line to check.</param>
    public static bool IsKept(ImmutableArray<LaidEdge> laid, LayingPlan plan, Polygon cuttingLine) =>
        Clipping.CoversAll(cuttingLine, laid.SelectMany(Feet).Where(foot => plan.Fold is null || foot.YMicrometers > RoundingMicrometers));

    private static IEnumerable<(double XMicrometers, double YMicrometers)> Feet(LaidEdge edge)
    {
        double width = edge.Width.Micrometers - RoundingMicrometers;
        for (int i = 1; i + 2 < edge.Points.Length && width > 0; i++)
        {
            Vector start = Vector.Of(edge.Points[i]);
            Vector end = Vector.Of(edge.Points[i + 1]);
            Vector foot = 0.5 * (start + end) + width * (end - start).Unit.Right;
            yield return (foot.X, foot.Y);
        }
    }
}
