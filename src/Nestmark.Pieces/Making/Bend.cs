using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>The cut edge at a bend inside an edge, where both sides have the same width.</summary>
internal static class Bend
{
    /// <summary>One point where the two offset lines meet; two where a sharp point is cut; three, through the seam line, where an inner bend has no room, which the clean-up then cuts away.</summary>
    /// <param name="before">Seam line point before the bend.</param>
    /// <param name="place">The bend.</param>
    /// <param name="after">Seam line point after the bend.</param>
    /// <param name="width">Zero or more, micrometers.</param>
    /// <param name="pointLimitRatio">1 or more.</param>
    public static RingStation Between(Vector before, Vector place, Vector after, double width, double pointLimitRatio)
    {
        Vector arriving = (place - before).Unit;
        Vector leaving = (after - place).Unit;
        Vector footBefore = place + width * arriving.Right;
        Vector footAfter = place + width * leaving.Right;
        double room = Math.Min((place - before).Norm, (after - place).Norm) / 2;
        ImmutableArray<Vector> points = width == 0 ? [place]
            : arriving.Cross(leaving) >= 0 ? Outside(place, arriving, leaving, width, pointLimitRatio)
            : HasRoom(arriving, leaving, width, room) ? [Tip(place, arriving, leaving, width)]
            : [footBefore, place, footAfter];
        return new RingStation(place, points, width == 0 ? null : (footBefore, footAfter));
    }

    private static Vector Tip(Vector place, Vector arriving, Vector leaving, double width) =>
        place + width / (1 + arriving.Dot(leaving)) * (arriving.Right + leaving.Right);

    private static bool HasRoom(Vector arriving, Vector leaving, double width, double roomMicrometers) =>
        width * -arriving.Cross(leaving) / (1 + arriving.Dot(leaving)) <= roomMicrometers;

    private static ImmutableArray<Vector> Outside(Vector place, Vector arriving, Vector leaving, double width, double pointLimitRatio)
    {
        if (2 <= pointLimitRatio * pointLimitRatio * (1 + arriving.Dot(leaving)))
            return [Tip(place, arriving, leaving, width)];
        Vector outward = (arriving - leaving).Unit;
        double run = (pointLimitRatio * width - width * arriving.Right.Dot(outward)) / arriving.Dot(outward);
        return [place + width * arriving.Right + run * arriving, place + width * leaving.Right - run * leaving];
    }
}
