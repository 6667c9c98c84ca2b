using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Carries places inside an outline along when the outline changes.</summary>
/// <remarks>
/// Method: mean value coordinates, M. S. Floater (2003), "Mean value coordinates", Computer Aided Geometric Design 20, formula for the weights of a
/// point among the vertices of a polygon. A change that is one shift, turn or stretch of the whole outline carries the inside exactly so.
/// </remarks>
internal sealed class MeanValues(ImmutableArray<Vector> before, ImmutableArray<Vector> after)
{
    private const double OnOutlineMicrometers = 1;

    /// <summary>Where a place goes.</summary>
    public Vector Follow(Vector place)
    {
        if (OnOutline(place) is { } on)
            return on;
        Vector sum = default;
        double whole = 0;
        double previous = HalfTangent(place, before.Length - 1);
        for (int i = 0; i < before.Length; i++)
        {
            double next = HalfTangent(place, i);
            double weight = (previous + next) / (before[i] - place).Norm;
            sum += weight * (after[i] - before[i]);
            whole += weight;
            previous = next;
        }
        return Math.Abs(whole) < 1e-15 ? place : place + 1 / whole * sum;
    }

    private Vector? OnOutline(Vector place)
    {
        for (int i = 0; i < before.Length; i++)
        {
            int next = (i + 1) % before.Length;
            Vector nearest = Nearest.OnSegment(before[i], before[next], place);
            if ((nearest - place).Norm > OnOutlineMicrometers)
                continue;
            double length = (before[next] - before[i]).Norm;
            double share = length == 0 ? 0 : (nearest - before[i]).Norm / length;
            return place + (1 - share) * (after[i] - before[i]) + share * (after[next] - before[next]);
        }
        return null;
    }

    /// <summary>Tangent of half the angle under which an edge is seen.</summary>
    private double HalfTangent(Vector place, int index)
    {
        Vector start = before[index] - place;
        Vector end = before[(index + 1) % before.Length] - place;
        double cross = start.Cross(end);
        // tan(a/2) = (1 - cos a) / sin a, and sin a / (1 + cos a) where the first would divide by nothing.
        return start.Dot(end) >= 0 ? cross / (start.Norm * end.Norm + start.Dot(end)) : (start.Norm * end.Norm - start.Dot(end)) / cross;
    }
}
