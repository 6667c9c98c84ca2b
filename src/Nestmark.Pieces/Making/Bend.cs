namespace Nestmark.Pieces.Making;

/// <summary>The cut edge at a bend inside an edge, where both sides have the same width.</summary>
internal static class Bend
{
    /// <summary>One point where the two offset lines meet; two where a sharp point is cut; two or three where an inner bend has no room, which the clean-up then cuts away.</summary>
    /// <param name="before">Seam line point before the bend.</param>
    /// <param name="place">The bend.</param>
    /// <param name="after">Seam line point after the bend.</param>
    /// <param name="width">Zero or more, micrometers.</param>
    /// <param name="rules">The point limit, and how to pass a bend without room.</param>
    public static IEnumerable<Vector> Between(Vector before, Vector place, Vector after, double width, JoinRules rules)
    {
        if (width == 0)
            return [place];
        Vector arriving = (place - before).Unit;
        Vector leaving = (after - place).Unit;
        double cosine = arriving.Dot(leaving);
        double sine = arriving.Cross(leaving);
        Vector tip = place + width / (1 + cosine) * (arriving.Right + leaving.Right);
        if (sine < 0)
        {
            double setback = width * -sine / (1 + cosine);
            double room = Math.Min((place - before).Norm, (after - place).Norm) / 2;
            return setback <= room ? [tip] : WithoutRoom(place, width * arriving.Right, width * leaving.Right, rules.TightBends);
        }
        double limit = rules.PointLimitRatio;
        return 2 <= limit * limit * (1 + cosine) ? [tip] : CutPoint(place, arriving, leaving, width, limit);
    }

    private static IEnumerable<Vector> WithoutRoom(Vector place, Vector toArriving, Vector toLeaving, TightBend tightBends) =>
        tightBends == TightBend.Straight ? [place + toArriving, place + toLeaving] : [place + toArriving, place, place + toLeaving];

    private static IEnumerable<Vector> CutPoint(Vector place, Vector arriving, Vector leaving, double width, double pointLimitRatio)
    {
        Vector outward = (arriving - leaving).Unit;
        double run = (pointLimitRatio * width - width * arriving.Right.Dot(outward)) / arriving.Dot(outward);
        return [place + width * arriving.Right + run * arriving, place + width * leaving.Right - run * leaving];
    }
}
