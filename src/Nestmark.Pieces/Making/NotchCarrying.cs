using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>Puts drawn notches on the seam line and carries them square out to the cutting line.</summary>
internal static class NotchCarrying
{
    private const double NearMicrometers = 3_000;

    /// <summary>Crossings nearer than this to the seam line are the seam line itself.</summary>
    private const double RoundingMicrometers = 2;

    /// <summary>All notches that lie near enough; says which do not.</summary>
    public static ImmutableArray<Notch> Of(ImmutableArray<PieceMark> drawn, LaidOutline laid, ICollection<PieceFault> faults)
    {
        List<Notch> notches = [];
        foreach (PieceMark mark in drawn)
        {
            Vector place = Vector.Of(laid.Frame.Apply(mark.Place));
            (double distance, LaidEdge edge) = laid.Edges.Select(edge => (Distance: DistanceTo(edge, place), edge)).MinBy(pair => pair.Distance);
            if (distance > NearMicrometers)
                faults.Add(PieceFaults.NotchOffOutline(mark.Label));
            else
                notches.Add(Carried(mark.Label, place, edge.Points, laid.CuttingLine));
        }
        return [.. notches];
    }

    private static double DistanceTo(LaidEdge edge, Vector place) => new OutlineEdge(edge.From, edge.To, edge.Points).DistanceMicrometers(place);

    /// <summary>A notch at the nearest place of an edge, carried out to the cutting line.</summary>
    /// <param name="name">Its name; may be empty.</param>
    /// <param name="drawn">Where it is to be.</param>
    /// <param name="edge">Counter-clockwise, in the frame of the piece.</param>
    /// <param name="cuttingLine">Of the piece.</param>
    public static Notch Carried(string name, Vector drawn, ImmutableArray<Point> edge, Polygon cuttingLine)
    {
        (Vector place, Vector outward) = OnSeamLine(edge, drawn);
        Point onSeamLine = place.Rounded();
        Vector onCuttingLine = OnCuttingLine(place, outward, new OutlineEdge("", "", [.. cuttingLine.Outer, cuttingLine.Outer[0]]));
        return new Notch(name, onSeamLine, onCuttingLine.Rounded());
    }

    /// <summary>Straight out of the seam line; the place itself where it lies on the cutting line, as on a fold or an edge without allowance.</summary>
    private static Vector OnCuttingLine(Vector place, Vector outward, OutlineEdge cuttingLine)
    {
        double distance = cuttingLine.DistanceMicrometers(place) <= RoundingMicrometers ? 0 : Exit(place, outward, cuttingLine.Points);
        return place + distance * outward;
    }

    /// <summary>The nearest point of an edge and the direction square out of it; at a bend inside the edge the middle of both.</summary>
    private static (Vector Place, Vector Outward) OnSeamLine(ImmutableArray<Point> edge, Vector drawn)
    {
        (double Distance, Vector Place, int Index) nearest = (double.PositiveInfinity, default, 0);
        for (int i = 0; i + 1 < edge.Length; i++)
        {
            Vector place = Nearest.OnSegment(Vector.Of(edge[i]), Vector.Of(edge[i + 1]), drawn);
            double distance = (place - drawn).Norm;
            if (distance < nearest.Distance)
                nearest = (distance, place, i);
        }
        Vector outward = OutwardOf(edge, nearest.Index);
        bool atBend = nearest.Index + 2 < edge.Length && nearest.Place == Vector.Of(edge[nearest.Index + 1]);
        return (nearest.Place, atBend ? (outward + OutwardOf(edge, nearest.Index + 1)).Unit : outward);
    }

    private static Vector OutwardOf(ImmutableArray<Point> edge, int index) => (Vector.Of(edge[index + 1]) - Vector.Of(edge[index])).Unit.Right;

    /// <summary>How far out the cutting line is first met.</summary>
    private static double Exit(Vector place, Vector outward, ImmutableArray<Point> cuttingLine)
    {
        double nearest = double.PositiveInfinity;
        for (int i = 0; i + 1 < cuttingLine.Length; i++)
        {
            Vector start = Vector.Of(cuttingLine[i]) - place;
            Vector end = Vector.Of(cuttingLine[i + 1]) - place;
            double startSide = outward.Cross(start);
            double endSide = outward.Cross(end);
            if (startSide > 0 == endSide > 0)
                continue;
            double distance = outward.Dot(start + startSide / (startSide - endSide) * (end - start));
            if (distance > 0)
                nearest = Math.Min(nearest, distance);
        }
        return double.IsInfinity(nearest) ? 0 : nearest;
    }
}
