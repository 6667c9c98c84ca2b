using Nestmark.Geometry;

namespace Nestmark.Pieces.Drafting;

/// <summary>Radii of skirts cut from a part of a circle.</summary>
/// <remarks>references/trade.md 9.1 (geometry) and [SPM]: allowances of the joined edges are added before the part of the circle is taken.</remarks>
public static class CircleRadii
{
    /// <summary>Waist radius at the seam line, where the seam lines run through the middle: W / (2 π f).</summary>
    /// <param name="waist">Waist line, above zero.</param>
    /// <param name="circleRatio">Part of a whole circle, above zero.</param>
    public static double WaistMillimeters(Length waist, double circleRatio) => waist.TotalMillimeters / (2 * Math.PI * circleRatio);

    /// <summary>Waist radius of the cutting line, where the cut edges run through the middle: (W + edges x seam) / (2 π f) less the waist allowance.</summary>
    /// <param name="waist">Waist line, above zero.</param>
    /// <param name="circleRatio">Part of a whole circle, above zero.</param>
    /// <param name="edges">Joined edges of all panels, two a panel.</param>
    /// <param name="seam">Allowance of each of those edges.</param>
    /// <param name="waistSeam">Allowance of the waist edge.</param>
    public static double CutWaistMillimeters(Length waist, double circleRatio, int edges, Length seam, Length waistSeam) =>
        (waist + seam * edges).TotalMillimeters / (2 * Math.PI * circleRatio) - waistSeam.TotalMillimeters;

    /// <summary>Waist radius at the seam line of panels whose cut edges run through the middle; the sewn waist comes out exact.</summary>
    /// <remarks>Seam edges lie at their distance square from the cut edge, not along the arc, so r solves r (angle - 2 asin(a / r)) = W / panels; by repeated insertion.</remarks>
    internal static double SeamWaistMillimeters(Length waist, double circleRatio, int panels, Length seam)
    {
        double angle = 2 * Math.PI * circleRatio / panels;
        double radius = (waist + seam * (2 * panels)).TotalMillimeters / (2 * Math.PI * circleRatio);
        for (int i = 0; i < 50; i++)
            radius = (waist.TotalMillimeters / panels + 2 * radius * InsetRadians(seam, radius)) / angle;
        return radius;
    }

    /// <summary>The angle that an allowance takes from the edge of a panel at a radius.</summary>
    internal static double InsetRadians(Length seam, double radiusMillimeters) => Math.PI / 2 - Angle.Acos(Math.Min(1, seam.TotalMillimeters / radiusMillimeters));
}
