using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Svg;

/// <summary>Joins open runs whose ends meet into longer ones, as drawing programs often leave outlines in separate strokes.</summary>
internal static class RunJoining
{
    private const int MostRuns = 2_000;

    /// <summary>The runs, open ones joined where an end lies within the gap of another's end; closed ones first, then in drawing order.</summary>
    /// <param name="runs">In drawing order.</param>
    /// <param name="gapMillimeters">Widest gap that is bridged.</param>
    /// <param name="bridged">Called for each gap that a straight line was drawn across.</param>
    public static List<SubPath> Join(IEnumerable<SubPath> runs, double gapMillimeters, Action<CurveSegment> bridged)
    {
        List<SubPath> all = [.. runs];
        List<SubPath> open = [.. all.Where(run => run.Form == SubPathForm.Open && run.GapMillimeters > gapMillimeters)];
        List<SubPath> done = [.. all.Except(open)];
        if (open.Count > MostRuns)
            return all;
        while (open.Count > 0)
        {
            SubPath run = open[0];
            open.RemoveAt(0);
            while (run.GapMillimeters > gapMillimeters && TakeNext(open, run.End, gapMillimeters) is SubPath next)
                run = new SubPath([.. run.Segments, .. Bridge(run.End, next.Start, bridged), .. next.Segments], SubPathForm.Open);
            done.Add(run);
        }
        return done;
    }

    private static CurveSegment[] Bridge(CurvePoint from, CurvePoint to, Action<CurveSegment> bridged)
    {
        if ((to - from).NormMillimeters <= SvgLimits.SilentGapMillimeters)
            return [];
        StraightSegment bridge = new(from, to);
        bridged(bridge);
        return [bridge];
    }

    private static SubPath? TakeNext(List<SubPath> open, CurvePoint from, double gapMillimeters)
    {
        int nearest = -1;
        double least = gapMillimeters;
        for (int i = 0; i < open.Count; i++)
        {
            double distance = Math.Min((open[i].Start - from).NormMillimeters, (open[i].End - from).NormMillimeters);
            if (distance <= least)
                (nearest, least) = (i, distance);
        }
        if (nearest < 0)
            return null;
        SubPath found = open[nearest];
        open.RemoveAt(nearest);
        bool isForward = (found.Start - from).NormMillimeters <= (found.End - from).NormMillimeters;
        return isForward ? found : Reversed(found);
    }

    private static SubPath Reversed(SubPath run) => new([.. run.Segments.Reverse().Select(Reversed)], run.Form);

    private static CurveSegment Reversed(CurveSegment segment) => segment switch
    {
        CubicSegment cubic => new CubicSegment(cubic.End, cubic.EndControl, cubic.StartControl, cubic.Start),
        ArcSegment arc => new ArcSegment(arc.End, arc.Start)
        {
            Center = arc.Center,
            CosineAxis = arc.CosineAxis,
            SineAxis = arc.SineAxis,
            StartDegrees = arc.StartDegrees + arc.SweepDegrees,
            SweepDegrees = -arc.SweepDegrees,
        },
        _ => new StraightSegment(segment.End, segment.Start),
    };
}
