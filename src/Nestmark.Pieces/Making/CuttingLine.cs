using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Making;

/// <summary>The cutting line around a seam line whose edges have allowances of their own.</summary>
/// <remarks>
/// Method: each edge is set off by its width, corners are joined by <see cref="CornerJoin"/>, and the ring is rounded to whole micrometers.
/// Where allowances run into each other the ring crosses itself; then <see cref="Clipping.PositiveWinding"/> keeps what each stretch of it
/// encloses, and those are united, so that the cost grows little faster than the count of points, whatever the widths.
/// Rounding takes at most 0.71 micrometers from an allowance; where many parts are joined, each joining may take as much again.
/// </remarks>
internal static class CuttingLine
{
    /// <summary>Smaller leftovers of the clean-up are rounding, not shapes.</summary>
    private const double SpeckSquareMillimeters = 1;

    /// <summary>The cutting line, or the fault that stands in its way.</summary>
    /// <param name="laid">Counter-clockwise around a simple seam line; a fold edge lies on y = 0 and the piece above it.</param>
    /// <param name="plan">Its widths, ends and limit count.</param>
    /// <param name="faults">Receives what is to be said.</param>
    public static Polygon? Around(ImmutableArray<LaidEdge> laid, LayingPlan plan, ICollection<PieceFault> faults)
    {
        Polygon seamLine = Polygon.Of(laid.SelectMany(edge => edge.Points.SkipLast(1)));
        if (laid.All(edge => edge.Width == Length.Zero))
            return seamLine;
        AllowanceRing ring = AllowanceRing.Around(laid, plan, faults);
        return AsItIs(ring, seamLine, plan) ?? OutsideOf(CleanedUp(ring, seamLine, plan), seamLine, faults);
    }

    /// <summary>The rounded ring itself where it does not cross itself: no point of it is moved.</summary>
    private static Polygon? AsItIs(AllowanceRing ring, Polygon seamLine, LayingPlan plan)
    {
        Point[] points = [.. ring.Points.Select(place => place.Rounded())];
        if (Polygon.TwiceSignedArea(points) < seamLine.TwiceArea || (plan.Fold is not null && points.Any(point => point.Y < 0)))
            return null;
        Polygon polygon = Polygon.Of(points);
        return Clipping.IsSimple(polygon) ? WithoutStraightPoints(polygon) : null;
    }

    /// <summary>What the ring encloses, on the piece's side of the fold; the largest part first.</summary>
    private static ImmutableArray<Polygon> CleanedUp(AllowanceRing ring, Polygon seamLine, LayingPlan plan)
    {
        ImmutableArray<Vector>[] divided = [.. ring.Parts()];
        IEnumerable<Polygon> parts = divided.SelectMany(part => Clipping.PositiveWinding([.. part.Select(place => (place.X, place.Y))]));
        if (divided.Length > 1)
            parts = Clipping.Union(parts.Prepend(seamLine)).Select(WithoutCrumbs);
        if (plan.Fold is not null)
            parts = parts.SelectMany(part => Clipping.AboveXAxis(part));
        return [.. parts.OrderByDescending(part => part.TwiceArea)];
    }

    private static Polygon? OutsideOf(ImmutableArray<Polygon> parts, Polygon seamLine, ICollection<PieceFault> faults)
    {
        if (parts.IsEmpty || parts.Skip(1).Any(part => part.AreaSquareMillimeters > SpeckSquareMillimeters) || !Holds(parts[0], seamLine))
        {
            faults.Add(PieceFaults.NoCuttingLine());
            return null;
        }
        if (parts[0].Holes.Any(hole => Math.Abs((double)Polygon.TwiceSignedArea(hole.AsSpan())) / 2e6 > SpeckSquareMillimeters))
            faults.Add(PieceFaults.OpeningClosed());
        return WithoutStraightPoints(parts[0]);
    }

    /// <summary>The outer ring without what the joining of many parts leaves on straight runs; as it is where it would no longer be simple.</summary>
    private static Polygon WithoutCrumbs(Polygon polygon)
    {
        CleanedRing cleaned = RingCleaning.Clean([.. polygon.Outer.Select(point => new OutlineVertex(point, VertexKind.Joint))]);
        if (cleaned.Vertices.Length < 3)
            return polygon;
        Polygon slim = Polygon.WithHoles(cleaned.Vertices.Select(vertex => vertex.Point), polygon.Holes.Select(hole => (IEnumerable<Point>)hole));
        return Clipping.IsSimple(slim) ? slim : polygon;
    }

    /// <summary>The outer ring without points that it passes exactly straight.</summary>
    private static Polygon WithoutStraightPoints(Polygon polygon)
    {
        ImmutableArray<Point> ring = polygon.Outer;
        return Polygon.Of(ring.Where((point, i) => Orientation.Of(ring[(i + ring.Length - 1) % ring.Length], point, ring[(i + 1) % ring.Length]) != 0));
    }

    private static bool Holds(Polygon part, Polygon seamLine)
    {
        double rounding = 0.002 * seamLine.PerimeterMillimeters;
        return Clipping.TotalSquareMillimeters(Clipping.Difference(seamLine, part)) <= rounding;
    }
}
