using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Nesting.Verification;

/// <summary>Judges the rules of matching on the cloth as it is cut: every layer of every placement, its points brought back to the flat cloth.</summary>
/// <remarks>
/// Knows nothing of groups, shifts and phases. A point and the way that the piece runs from it say what print it meets; on an even print a piece that runs
/// back from a bar meets what one meets that runs forth from it.
/// </remarks>
internal static class PrintVerifier
{
    /// <summary>Points may miss each other by so much.</summary>
    /// <remarks>One millimeter, the limit asked for; the search keeps to some micrometers.</remarks>
    public const long ToleranceMicrometers = 1_000;

    /// <summary>Every rule that a marker breaks.</summary>
    public static IEnumerable<string> Violations(LayTask task, Marker marker)
    {
        if (task.Print is not { } print)
            yield break;
        ImmutableArray<PrintTie> ties = [.. task.Demands.Select(demand => demand.Hold).OfType<PrintHold>().SelectMany(hold => hold.Ties).Distinct()];
        foreach (PrintTie tie in ties)
        {
            PrintMeeting[] first = [.. MeetingsOf(print.Cloth, marker, tie, tie.First)];
            PrintMeeting[] second = tie.Second is null ? [] : [.. MeetingsOf(print.Cloth, marker, tie, tie.Second)];
            if (tie.Target == MatchTarget.Border ? first.Any(meeting => !LiesOnBorder(print.Cloth, marker.Surface, meeting)) : Misses(print.Cloth, tie, first, second))
                yield return $"\"{tie.Text}\" is not kept for size \"{tie.Size}\"";
        }
    }

    private static bool Misses(Cloth cloth, PrintTie tie, PrintMeeting[] first, PrintMeeting[] second)
    {
        if ((tie.Axis == ClothAxis.Along ? cloth.Repeat?.Along : cloth.Repeat?.Across) is not { } length)
            return false;
        long repeat = length.Micrometers;
        if (cloth.Repeat!.Balance == PrintBalance.Uneven && first.Concat(second).Any(meeting => meeting.Sign < 0))
            return true;
        if (tie.Target == MatchTarget.Point)
            return first.Any(one => second.Any(other => Miss(one.Phase - other.Phase, repeat) > ToleranceMicrometers));
        long wanted = tie.Target == MatchTarget.Bar ? 0 : repeat / 2;
        return first.Any(one => Miss(one.Phase - wanted, repeat) > ToleranceMicrometers);
    }

    private static long Miss(long value, long repeat)
    {
        long rest = Math.Abs(value) % repeat;
        return Math.Min(rest, repeat - rest);
    }

    private static bool LiesOnBorder(Cloth cloth, LaySurface surface, PrintMeeting meeting)
    {
        if (cloth.Border is not { } border)
            return false;
        long near = (border.From - cloth.Selvage).Micrometers;
        long far = surface.UsableWidth.Micrometers - near;
        bool isNear = border.Edge != BorderEdge.Far && Math.Abs(meeting.Place - near) <= ToleranceMicrometers;
        bool isFar = border.Edge != BorderEdge.Near && Math.Abs(meeting.Place - far) <= ToleranceMicrometers;
        return isNear || isFar;
    }

    /// <summary>A point on every layer of every placement of its piece, on both sides of a piece that is cut whole.</summary>
    private static IEnumerable<PrintMeeting> MeetingsOf(Cloth cloth, Marker marker, PrintTie tie, TiedPoint tied)
    {
        foreach (Placement placement in marker.Placements.Where(placement => placement.Piece.Name == tied.Piece && placement.Size == tie.Size))
        {
            Point[] sides = placement.Piece.CenterLine is null ? [tied.Place] : [tied.Place, tied.Place with { Y = -tied.Place.Y }];
            foreach (Point side in sides)
            {
                bool isMirrored = side != tied.Place;
                foreach (PrintMeeting meeting in LayersOf(cloth, marker, tie.Axis, placement, side, isMirrored))
                    yield return meeting;
            }
        }
    }

    private static IEnumerable<PrintMeeting> LayersOf(Cloth cloth, Marker marker, ClothAxis axis, Placement placement, Point side, bool isMirrored)
    {
        Point onLay = placement.Map(side);
        (Point Along, Point Across) ways = (placement.Map(side + new Point(1000, 0)) - onLay, placement.Map(side + new Point(0, isMirrored ? -1000 : 1000)) - onLay);
        if (axis == ClothAxis.Along)
        {
            long from = onLay.X - marker.FirstBar.GetValueOrDefault().Micrometers;
            int sign = Math.Sign(ways.Along.X + ways.Across.X);
            return [new PrintMeeting(onLay.X, sign * from, sign)];
        }
        int acrossSign = Math.Sign(ways.Along.Y + ways.Across.Y);
        return LayPrint.LayersIn(marker.Surface, BandUnder(marker, placement)).Select(layer =>
        {
            long place = layer.Sign * (onLay.Y - layer.Shift.Micrometers);
            int sign = acrossSign * layer.Sign;
            return new PrintMeeting(place, sign * (place - LayPrint.FirstBarOf(cloth).Micrometers), sign);
        });
    }

    private static int BandUnder(Marker marker, Placement placement) => Enumerable.Range(0, marker.Surface.Bands.Length)
        .First(i => marker.Surface.Bands[i].Layers == placement.Layers && marker.Surface.Bands[i].Holds(placement.CuttingLine.Bounds, marker.LayLength));
}
