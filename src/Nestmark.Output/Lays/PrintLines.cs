using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.Lays;

/// <summary>The bars and borders of a printed cloth, drawn lightly under the pieces.</summary>
internal static class PrintLines
{
    private const double LeastSpacing = 0.8;

    private static readonly Ink Light = new(0.5, LineStyle.Solid, 0.82);

    /// <summary>Draws them where they are to be matched; bars closer than can be told apart are left out.</summary>
    public static void Draw(Drawing page, Frame frame, ClothPlan cloth)
    {
        if (cloth.Matching is null)
            return;
        LayPrint print = LayPrint.Of(cloth.Cloth, cloth.Marker.Surface);
        Area area = ClothFrame.Of(cloth);
        for (int band = 0; band < print.Bars.Length; band++)
        {
            LayBand room = cloth.Marker.Surface.Bands[band];
            double left = room.From == Length.Zero ? area.LeftMillimeters : room.From.TotalMillimeters;
            double right = room.To?.TotalMillimeters ?? area.RightMillimeters;
            foreach (Length border in print.Borders[band])
                page.Line(Role.Print, Light with { Style = LineStyle.Dashed }, frame.Of(left, border.TotalMillimeters), frame.Of(right, border.TotalMillimeters));
            if (cloth.Cloth.Repeat?.Across is { } across && print.Bars[band] is { } bar)
                page.Lines(Role.Print, Light, Places(frame, room.Low, room.High, bar, across).Select(y => ImmutableArray.Create(frame.Of(left, y), frame.Of(right, y))));
        }
        if (cloth.Cloth.Repeat?.Along is { } along && cloth.Marker.FirstBar is { } first)
        {
            IEnumerable<double> places = Places(frame, -cloth.Cloth.Ends, cloth.Marker.LayLength + cloth.Cloth.Ends, first, along);
            page.Lines(Role.Print, Light, places.Select(x => ImmutableArray.Create(frame.Of(x, area.BottomMillimeters), frame.Of(x, area.TopMillimeters))));
        }
    }

    private static IEnumerable<double> Places(Frame frame, Length low, Length high, Length bar, Length repeat)
    {
        double spacing = frame.Of(repeat.TotalMillimeters, 0).XMillimeters - frame.Of(0, 0).XMillimeters;
        if (Math.Abs(spacing) < LeastSpacing)
            yield break;
        long first = low.Micrometers + LayPrint.Modulo((bar - low).Micrometers, repeat.Micrometers);
        for (long place = first; place <= high.Micrometers; place += repeat.Micrometers)
            yield return place / 1000.0;
    }
}
