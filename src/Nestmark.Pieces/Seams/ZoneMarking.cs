using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Seams;

/// <summary>Draws a zone of gathers, ease or pleats on a piece: notches at its ends, and a line beside the seam line within it.</summary>
public static class ZoneMarking
{
    /// <summary>How far inside the seam line the line of the zone is drawn: 6 mm, the distance of the second gathering thread.</summary>
    /// <remarks>Common practice: one row of stitches on each side of the seam line, a quarter inch from it.</remarks>
    public static Length Inset { get; } = Length.FromMillimeters(6);

    /// <summary>The piece with the zone's line and notches.</summary>
    /// <param name="run">The edges that the zone lies on; its piece is marked.</param>
    /// <param name="fromMillimeters">Start of the zone along the run.</param>
    /// <param name="toMillimeters">End of the zone along the run.</param>
    /// <param name="label">Beside the line, as "gather to 24 cm"; empty leaves out the line.</param>
    public static Piece Marked(EdgeRun run, double fromMillimeters, double toMillimeters, string label)
    {
        ImmutableArray<Notch> notches = [.. new[] { fromMillimeters, toMillimeters }
            .Where(along => along > 1 && along < run.LengthMillimeters - 1 && !run.Notches.Any(notch => Math.Abs(notch.AlongMillimeters - along) < 1))
            .Select(along => NotchAt(run, along))];
        ImmutableArray<PieceLine> lines = label.Length > 0 && toMillimeters - fromMillimeters > 1 ? [new PieceLine(label, LineIn(run, fromMillimeters, toMillimeters))] : [];
        return run.Piece with { Notches = [.. run.Piece.Notches, .. notches], Lines = [.. run.Piece.Lines, .. lines] };
    }

    private static Notch NotchAt(EdgeRun run, double alongMillimeters)
    {
        Vector place = Vector.Of(run.PlaceAt(alongMillimeters));
        return NotchCarrying.Carried("", place, Forward(run), run.Piece.CuttingLine);
    }

    /// <summary>The points counter-clockwise as laid, so that outward is to the right.</summary>
    private static ImmutableArray<Point> Forward(EdgeRun run) => IsForward(run) ? run.Points : [.. run.Points.Reverse()];

    private static bool IsForward(EdgeRun run)
    {
        ImmutableArray<Point> ring = run.Piece.SeamLine.Outer;
        int index = ring.IndexOf(run.Points[0]);
        return index < 0 || ring[(index + 1) % ring.Length] == run.Points[1];
    }

    private static ImmutableArray<Point> LineIn(EdgeRun run, double fromMillimeters, double toMillimeters)
    {
        double inset = Inset.Micrometers * (IsForward(run) ? 1 : -1);
        int steps = Math.Max(1, (int)Math.Ceiling((toMillimeters - fromMillimeters) / 10));
        List<Point> points = [];
        for (int i = 0; i <= steps; i++)
        {
            double along = fromMillimeters + (toMillimeters - fromMillimeters) * i / steps;
            Vector before = Vector.Of(run.PlaceAt(Math.Max(0, along - 1)));
            Vector after = Vector.Of(run.PlaceAt(Math.Min(run.LengthMillimeters, along + 1)));
            Vector inward = -(after - before).Unit.Right;
            points.Add((Vector.Of(run.PlaceAt(along)) + inset * inward).Rounded());
        }
        return [.. points];
    }
}
