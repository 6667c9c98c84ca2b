using System.Collections.Immutable;

namespace Nestmark.Geometry.NoFit;

/// <summary>Finds single places, overlapped all around, at which two shapes fit exactly.</summary>
/// <remarks>Such a place puts a convex corner of one shape into a reflex corner of the other with at least one pair of edges flush; each is tested exactly. Fits that touch in edge interiors only are not searched for.</remarks>
internal static class ExactFits
{
    /// <summary>The places, in the order of the corners.</summary>
    public static ImmutableArray<Point> Of(ImmutableArray<Point> still, ImmutableArray<Point> moving, NoFitRegion region)
    {
        ImmutableArray<Point>.Builder fits = ImmutableArray.CreateBuilder<Point>();
        for (int i = 0; i < still.Length; i++)
        {
            for (int j = 0; j < moving.Length; j++)
            {
                if (!AreComplementary(still, i, moving, j))
                    continue;
                Point place = still[i] - moving[j];
                if (!fits.Contains(place) && region.Locate(place) > 0 && !InteriorOverlap.OfRings(still, moving, place))
                    fits.Add(place);
            }
        }
        return fits.ToImmutable();
    }

    private static bool AreComplementary(ImmutableArray<Point> still, int i, ImmutableArray<Point> moving, int j)
    {
        (Point stillBefore, Point stillAfter) = Edges(still, i);
        (Point movingBefore, Point movingAfter) = Edges(moving, j);
        bool stillIsConvex = Orientation.Cross(stillBefore, stillAfter) > 0;
        bool movingIsConvex = Orientation.Cross(movingBefore, movingAfter) > 0;
        return stillIsConvex != movingIsConvex
            && (Orientation.Cross(stillBefore, movingAfter) == 0 || Orientation.Cross(stillAfter, movingBefore) == 0);
    }

    private static (Point Before, Point After) Edges(ImmutableArray<Point> ring, int i) =>
        (ring[i] - ring[(i == 0 ? ring.Length : i) - 1], ring[i + 1 == ring.Length ? 0 : i + 1] - ring[i]);
}
