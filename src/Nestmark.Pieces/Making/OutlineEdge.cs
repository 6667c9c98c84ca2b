using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>The run of an outline from one corner to the next, both included.</summary>
internal sealed record OutlineEdge(string From, string To, ImmutableArray<Point> Points)
{
    public string Name => From + "-" + To;

    /// <summary>Length along the outline in micrometers.</summary>
    public double LengthMicrometers
    {
        get
        {
            double sum = 0;
            for (int i = 0; i + 1 < Points.Length; i++)
                sum += (Vector.Of(Points[i + 1]) - Vector.Of(Points[i])).Norm;
            return sum;
        }
    }

    /// <summary>Largest distance of a point from the straight line between both ends, in micrometers.</summary>
    public double BowMicrometers
    {
        get
        {
            Vector start = Vector.Of(Points[0]);
            Vector across = Vector.Of(Points[^1]) - start;
            if (across.Norm == 0)
                return double.PositiveInfinity;
            Vector direction = across.Unit;
            return Points.Max(point => Math.Abs(direction.Cross(Vector.Of(point) - start)));
        }
    }

    /// <summary>Distance of a place from the run, in micrometers.</summary>
    public double DistanceMicrometers(Vector place)
    {
        double nearest = double.PositiveInfinity;
        for (int i = 0; i + 1 < Points.Length; i++)
            nearest = Math.Min(nearest, (Nearest.OnSegment(Vector.Of(Points[i]), Vector.Of(Points[i + 1]), place) - place).Norm);
        return nearest;
    }
}
