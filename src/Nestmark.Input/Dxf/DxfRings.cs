using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>Finds closed lines among runs, loose ends joined.</summary>
/// <remarks>Gaps: up to 0.1 mm in silence, up to 2 mm with a note (references/formats.md 2.6).</remarks>
internal static class DxfRings
{
    private const long NearMicrometers = 100;

    /// <summary>The closed runs and the runs that stay open; gaps wider than 0.1 mm are noted.</summary>
    public static (List<SubPath> Closed, List<SubPath> Open) Of(IEnumerable<SubPath> runs, Action<Fault> note)
    {
        List<SubPath> joined = RunJoining.Join(runs, SvgLimits.NotedGapMillimeters, bridge => NoteGap(bridge, note));
        List<SubPath> closed = [];
        List<SubPath> open = [];
        foreach (SubPath run in joined)
        {
            if (IsNearlyClosed(run))
                closed.Add(Completed(run, note));
            else
                open.Add(run);
        }
        return (closed, open);
    }

    /// <summary>Closed, or its ends within the gap that is closed and the run itself much longer than that.</summary>
    public static bool IsNearlyClosed(SubPath run) =>
        run.Form == SubPathForm.Closed || (run.GapMillimeters <= SvgLimits.NotedGapMillimeters && run.Segments.Length > 1);

    /// <summary>Whether flattening keeps within the number of points that an outline may have; never flattens much more than that.</summary>
    public static bool IsWithinBounds(SubPath run)
    {
        int points = run.Segments.Length;
        foreach (CurveSegment segment in run.Segments)
        {
            if (points > DxfLimits.MostOutlinePoints)
                return false;
            if (segment is not StraightSegment)
                points += Flattening.Open([segment]).Length;
        }
        return points <= DxfLimits.MostOutlinePoints;
    }

    /// <summary>The runs without those that lie on an earlier one: same box and same area within a thousandth.</summary>
    public static List<DxfRing> WithoutTwins(IEnumerable<SubPath> runs, out int twins)
    {
        Dictionary<(long, long), List<DxfRing>> byCorner = [];
        List<DxfRing> kept = [];
        twins = 0;
        foreach (SubPath run in runs)
        {
            DxfRing ring = DxfRing.Of(run);
            (long x, long y) = (ring.Bounds.MinX / 1_000, ring.Bounds.MinY / 1_000);
            bool isTwin = Neighbors(byCorner, x, y).Any(other => IsSame(other, ring));
            twins += isTwin ? 1 : 0;
            if (isTwin)
                continue;
            kept.Add(ring);
            if (!byCorner.TryGetValue((x, y), out List<DxfRing>? list))
                byCorner.Add((x, y), list = []);
            list.Add(ring);
        }
        return kept;
    }

    /// <summary>A place in words.</summary>
    public static string PlaceText(Point point) =>
        string.Create(CultureInfo.InvariantCulture, $"{point.XMillimeters:0.0}, {point.YMillimeters:0.0} mm from the drawing's origin");

    private static IEnumerable<DxfRing> Neighbors(Dictionary<(long, long), List<DxfRing>> byCorner, long x, long y)
    {
        for (int i = 0; i < 9; i++)
        {
            if (byCorner.TryGetValue((x + i % 3 - 1, y + i / 3 - 1), out List<DxfRing>? list))
            {
                foreach (DxfRing ring in list)
                    yield return ring;
            }
        }
    }

    private static bool IsSame(DxfRing left, DxfRing right) =>
        Math.Abs(left.Bounds.MinX - right.Bounds.MinX) <= NearMicrometers && Math.Abs(left.Bounds.MinY - right.Bounds.MinY) <= NearMicrometers
        && Math.Abs(left.Bounds.MaxX - right.Bounds.MaxX) <= NearMicrometers && Math.Abs(left.Bounds.MaxY - right.Bounds.MaxY) <= NearMicrometers
        && Math.Abs(left.Area - right.Area) <= 0.001 * left.Area;

    private static SubPath Completed(SubPath run, Action<Fault> note)
    {
        double gap = run.GapMillimeters;
        if (gap == 0)
            return run with { Form = SubPathForm.Closed };
        StraightSegment bridge = new(run.End, run.Start);
        if (gap > SvgLimits.SilentGapMillimeters && run.Form == SubPathForm.Open)
            NoteGap(bridge, note);
        ImmutableArray<CurveSegment> segments = gap > SvgLimits.SilentGapMillimeters || run.Segments.Length < 3
            ? run.Segments.Add(bridge)
            : run.Segments.SetItem(run.Segments.Length - 1, EndingAt(run.Segments[^1], run.Start));
        return new SubPath(segments, SubPathForm.Closed);
    }

    private static CurveSegment EndingAt(CurveSegment segment, CurvePoint end) => segment switch
    {
        StraightSegment straight => straight with { End = end },
        CubicSegment cubic => cubic with { End = end },
        ArcSegment arc => arc with { End = end },
        _ => segment,
    };

    private static void NoteGap(CurveSegment bridge, Action<Fault> note) =>
        note(DxfFaults.GapClosed((bridge.End - bridge.Start).NormMillimeters, PlaceText(bridge.Start.Rounded())));
}
