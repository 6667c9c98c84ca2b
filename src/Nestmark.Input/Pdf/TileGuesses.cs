using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Pdf;

/// <summary>Lists how the pages of a pattern may be trimmed and laid: by the frames and clips that they share, by the reach of their lines, and by what several of them show.</summary>
internal static class TileGuesses
{
    private const double LeastRatio = 0.6;
    private const double SameMillimeters = 0.1;
    private const int MostWindows = 3;
    private const int MostOverlaps = 2;
    private const int FewestVotes = 3;
    private const int MostPlaces = 300;

    /// <summary>The guesses, the likeliest window first; edge to edge before overlaps.</summary>
    /// <param name="pages">Pages of one size.</param>
    public static ImmutableArray<TileGuess> Of(ImmutableArray<PdfSheet> pages)
    {
        ImmutableArray<CurvePoint>[] places = [.. pages.Select(Places)];
        List<TileGuess> guesses = [];
        foreach (TileCutting window in Windows(pages))
        {
            double width = window.RightMillimeters - window.LeftMillimeters;
            double height = window.TopMillimeters - window.BottomMillimeters;
            foreach (double overlapX in Overlaps(places, width, point => point))
            {
                foreach (double overlapY in Overlaps(places, height, point => new CurvePoint(point.YMillimeters, point.XMillimeters)))
                    guesses.Add(new TileGuess(window, overlapX, overlapY));
            }
        }
        return [.. guesses];
    }

    /// <summary>Whether a page draws a window as a frame, or clips to it.</summary>
    public static bool HasWindow(PdfSheet page, TileCutting window) => page.Clips.Concat(Frames(page)).Any(box =>
        Math.Abs(box.LeftMillimeters - window.LeftMillimeters) < SameMillimeters && Math.Abs(box.RightMillimeters - window.RightMillimeters) < SameMillimeters
        && Math.Abs(box.BottomMillimeters - window.BottomMillimeters) < SameMillimeters && Math.Abs(box.TopMillimeters - window.TopMillimeters) < SameMillimeters);

    private static IEnumerable<TileCutting> Windows(ImmutableArray<PdfSheet> pages)
    {
        (double width, double height) = (pages[0].WidthMillimeters, pages[0].HeightMillimeters);
        IEnumerable<TileCutting> shared = pages.SelectMany(page => page.Clips.Concat(Frames(page)).Where(IsLarge).Select(Rounded).Distinct())
            .GroupBy(window => window).Where(group => group.Count() >= 2).OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key.LeftMillimeters).ThenBy(group => group.Key.BottomMillimeters).ThenBy(group => group.Key.RightMillimeters).ThenBy(group => group.Key.TopMillimeters)
            .Select(group => group.Key);
        CurvePoint[] ends = [.. pages.SelectMany(page => page.Strokes).SelectMany(stroke => stroke.Run.Segments).SelectMany(segment => new[] { segment.Start, segment.End })];
        TileCutting reach = new(
            ends.Min(end => end.XMillimeters), ends.Min(end => end.YMillimeters), ends.Max(end => end.XMillimeters), ends.Max(end => end.YMillimeters));
        return [.. shared.Take(MostWindows), .. new[] { reach }.Where(IsLarge)];

        bool IsLarge(TileCutting window) =>
            window.RightMillimeters - window.LeftMillimeters is double across && across >= LeastRatio * width && across <= width + SameMillimeters
            && window.TopMillimeters - window.BottomMillimeters is double up && up >= LeastRatio * height && up <= height + SameMillimeters;
    }

    private static IEnumerable<TileCutting> Frames(PdfSheet page)
    {
        foreach (PdfStroke stroke in page.Strokes.Where(stroke => DrawnBox.UprightRectangle(stroke.Run) is not null))
        {
            CurvePoint[] corners = [.. stroke.Run.Segments.Select(segment => segment.Start), stroke.Run.End];
            yield return new TileCutting(
                corners.Min(corner => corner.XMillimeters), corners.Min(corner => corner.YMillimeters), corners.Max(corner => corner.XMillimeters), corners.Max(corner => corner.YMillimeters));
        }
    }

    private static TileCutting Rounded(TileCutting window) => new(
        Math.Round(window.LeftMillimeters, 2), Math.Round(window.BottomMillimeters, 2), Math.Round(window.RightMillimeters, 2), Math.Round(window.TopMillimeters, 2));

    private static ImmutableArray<CurvePoint> Places(PdfSheet page) =>
        [.. page.Strokes.SelectMany(stroke => stroke.Run.Segments).Select(segment => segment.Start).Distinct().Take(MostPlaces)];

    /// <summary>None, and the overlaps by which most corners of one page lie on corners of another at the same height.</summary>
    private static IEnumerable<double> Overlaps(ImmutableArray<CurvePoint>[] places, double size, Func<CurvePoint, CurvePoint> turned)
    {
        Dictionary<long, (int Count, double Sum)> votes = [];
        CurvePoint[][] sorted = [.. places.Select(page => page.Select(turned).OrderBy(place => place.YMillimeters).ToArray())];
        for (int first = 0; first < sorted.Length; first++)
        {
            for (int second = 0; second < sorted.Length; second++)
            {
                if (first != second)
                    Vote(sorted[first], sorted[second], size, votes);
            }
        }
        double[] steps = [.. votes.Where(vote => vote.Value.Count >= FewestVotes).OrderByDescending(vote => vote.Value.Count).ThenBy(vote => vote.Key)
            .Take(MostOverlaps).Select(vote => vote.Value.Sum / vote.Value.Count)];
        return [0, .. steps.Select(step => size - step).Where(overlap => overlap > SameMillimeters)];
    }

    private static void Vote(CurvePoint[] first, CurvePoint[] second, double size, Dictionary<long, (int Count, double Sum)> votes)
    {
        int from = 0;
        foreach (CurvePoint place in first)
        {
            while (from < second.Length && second[from].YMillimeters < place.YMillimeters - SameMillimeters / 2)
                from++;
            for (int i = from; i < second.Length && second[i].YMillimeters <= place.YMillimeters + SameMillimeters / 2; i++)
            {
                double step = place.XMillimeters - second[i].XMillimeters;
                if (step <= size / 2 || step > size)
                    continue;
                long key = (long)Math.Round(step / SameMillimeters);
                (int count, double sum) = votes.GetValueOrDefault(key);
                votes[key] = (count + 1, sum + step);
            }
        }
    }
}
