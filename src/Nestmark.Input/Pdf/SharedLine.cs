using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>A line of a page by its form, to find it again on another page.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="Through">From its start to its end.</param>
/// <param name="Segments">How many segments it has.</param>
/// <param name="LeftMillimeters">Its least x.</param>
/// <param name="BottomMillimeters">Its least y.</param>
/// <param name="RightMillimeters">Its largest x.</param>
/// <param name="TopMillimeters">Its largest y.</param>
internal readonly record struct SharedLine(
    CurvePoint Start, CurvePoint Through, int Segments, double LeftMillimeters, double BottomMillimeters, double RightMillimeters, double TopMillimeters)
{
    private const double SameMillimeters = 0.05;
    private const double ShortestMillimeters = 20;

    /// <summary>Measured at the ends of its segments.</summary>
    public static SharedLine Of(SubPath run)
    {
        (double left, double bottom, double right, double top) = (run.Start.XMillimeters, run.Start.YMillimeters, run.Start.XMillimeters, run.Start.YMillimeters);
        foreach (CurveSegment segment in run.Segments)
        {
            (left, right) = (Math.Min(left, segment.End.XMillimeters), Math.Max(right, segment.End.XMillimeters));
            (bottom, top) = (Math.Min(bottom, segment.End.YMillimeters), Math.Max(top, segment.End.YMillimeters));
        }
        return new SharedLine(run.Start, run.End - run.Start, run.Segments.Length, left, bottom, right, top);
    }

    /// <summary>Whether it is drawn on both sides of an edge of a window and long enough to be known again.</summary>
    public bool GoesBeyond(TileCutting window)
    {
        bool isSeen = LeftMillimeters < window.RightMillimeters && RightMillimeters > window.LeftMillimeters && BottomMillimeters < window.TopMillimeters && TopMillimeters > window.BottomMillimeters;
        bool isWhole = LeftMillimeters >= window.LeftMillimeters && RightMillimeters <= window.RightMillimeters && BottomMillimeters >= window.BottomMillimeters && TopMillimeters <= window.TopMillimeters;
        return isSeen && !isWhole && Math.Max(RightMillimeters - LeftMillimeters, TopMillimeters - BottomMillimeters) >= ShortestMillimeters;
    }

    /// <summary>Whether another line is the same one, moved.</summary>
    public bool IsLike(SharedLine other) =>
        Segments == other.Segments && (Through - other.Through).NormMillimeters <= SameMillimeters
        && Math.Abs(RightMillimeters - LeftMillimeters - other.RightMillimeters + other.LeftMillimeters) <= SameMillimeters
        && Math.Abs(TopMillimeters - BottomMillimeters - other.TopMillimeters + other.BottomMillimeters) <= SameMillimeters;
}
