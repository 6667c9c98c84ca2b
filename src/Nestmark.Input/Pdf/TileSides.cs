using System.Collections.Immutable;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>Finds where the lines of a page run off its window, and whether those of two pages go on in each other.</summary>
internal static class TileSides
{
    /// <summary>Ends this near to a side lie on it.</summary>
    private const double OnSideMillimeters = 0.15;

    /// <summary>Ends of two pages this near to each other meet: printed patterns are exact to less.</summary>
    private const double MeetMillimeters = 0.4;

    /// <summary>A line may bend by this sine where two pages meet, since curves are cut into straight strokes.</summary>
    private const double BendSine = 0.15;

    /// <summary>The ends by side, in their order along it.</summary>
    public static ImmutableArray<RunOff> Of(PdfSheet page, TileCutting window)
    {
        List<RunOff> ends = [];
        foreach (PdfStroke stroke in page.Strokes.Where(stroke => !PdfJoining.IsFrame(stroke, page.WidthMillimeters, page.HeightMillimeters)))
        {
            foreach (SubPath run in window.Inside(stroke.Run))
                ends.AddRange(Ends(run, window));
        }
        return [.. ends.OrderBy(end => end.Side).ThenBy(end => end.AlongMillimeters)];
    }

    /// <summary>
    /// How many lines go on from a side of one page over the opposite side of another; <c>null</c> where one runs off either and does not.
    /// Rulings need not go on: a page has them on the sides where it has neighbors.
    /// </summary>
    /// <param name="first">What runs off the right or upper side of a page.</param>
    /// <param name="second">What runs off the left or lower side of another.</param>
    public static int? Meeting(ImmutableArray<RunOff> first, ImmutableArray<RunOff> second)
    {
        List<RunOff> left = [.. second];
        foreach (RunOff end in first.OrderBy(end => end.IsRuled))
        {
            int index = left.FindIndex(other => Math.Abs(other.AlongMillimeters - end.AlongMillimeters) <= MeetMillimeters && (other.Outward + end.Outward).NormMillimeters <= BendSine);
            if (index >= 0)
                left.RemoveAt(index);
            else if (!end.IsRuled)
                return null;
        }
        return left.TrueForAll(end => end.IsRuled) ? second.Length - left.Count : null;
    }

    private static IEnumerable<RunOff> Ends(SubPath run, TileCutting window)
    {
        if (run.Form == SubPathForm.Closed)
            yield break;
        TileSide? start = SideOf(run.Start, window);
        TileSide? end = SideOf(run.End, window);
        bool isRuled = start is not null && end is not null && run.Segments.Length == 1;
        if (start is TileSide one && Direction(run.Segments[0], 0.02, 0) is CurvePoint outward)
            yield return new RunOff(one, Along(one, run.Start), outward, isRuled);
        if (end is TileSide other && Direction(run.Segments[^1], 0.98, 1) is CurvePoint away)
            yield return new RunOff(other, Along(other, run.End), away, isRuled);
    }

    private static CurvePoint? Direction(CurveSegment segment, double from, double to)
    {
        CurvePoint step = segment.PointAt(to) - segment.PointAt(from);
        return step.NormMillimeters > 1e-9 ? step * (1 / step.NormMillimeters) : null;
    }

    private static double Along(TileSide side, CurvePoint point) => side is TileSide.Left or TileSide.Right ? point.YMillimeters : point.XMillimeters;

    private static TileSide? SideOf(CurvePoint point, TileCutting window)
    {
        (double Distance, TileSide Side)[] sides =
        [
            (Math.Abs(point.XMillimeters - window.LeftMillimeters), TileSide.Left), (Math.Abs(point.XMillimeters - window.RightMillimeters), TileSide.Right),
            (Math.Abs(point.YMillimeters - window.BottomMillimeters), TileSide.Bottom), (Math.Abs(point.YMillimeters - window.TopMillimeters), TileSide.Top),
        ];
        (double distance, TileSide side) = sides.MinBy(pair => pair.Distance);
        return distance <= OnSideMillimeters ? side : null;
    }
}
