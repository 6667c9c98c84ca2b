using CsCheck;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;

namespace Nestmark.Tests.Geometry;

/// <summary>Arcs given by their ends, against the ellipse's own equation and the published conversion (SVG 2, implementation notes; references/formats.md 3.3).</summary>
public sealed class CurveArcTests
{
    private static readonly Gen<CurvePoint> Points = Gen.Select(Gen.Double[-100, 100], Gen.Double[-100, 100], (x, y) => new CurvePoint(x, y));

    [Fact]
    public void Every_point_satisfies_the_equation_of_the_ellipse() =>
        Gen.Select(Points, Points, Gen.Double[5, 400], Gen.Double[5, 400], Gen.Double[0, 360], Gen.Int[0, 3]).Check(500,
            sample =>
            {
                var (start, end, rx, ry, rotation, flags) = sample;
                if ((end - start).NormMillimeters < 0.001)
                    return;
                ArcSegment arc = Assert.IsType<ArcSegment>(Arc(start, end, rx, ry, rotation, flags).ToSegment());
                double widening = arc.CosineAxis.NormMillimeters / rx;
                Assert.True(widening >= 1 - 1e-9);
                for (int i = 0; i <= 20; i++)
                    Assert.Equal(1, Equation(arc.PointAt(i / 20.0) - arc.Center, rx * widening, ry * widening, rotation), 6);
                Assert.InRange((arc.PointAt(0) - start).NormMillimeters, 0, 1e-5);
                Assert.InRange((arc.PointAt(1) - end).NormMillimeters, 0, 1e-5);
            });

    [Fact]
    public void Flags_choose_the_longer_way_and_the_sense() =>
        Gen.Select(Points, Points, Gen.Int[0, 3]).Check(200, (start, end, flags) =>
        {
            if ((end - start).NormMillimeters < 0.001)
                return;
            ArcSegment arc = Assert.IsType<ArcSegment>(Arc(start, end, 150, 150, 0, flags).ToSegment());
            Assert.Equal((flags & 1) != 0, Math.Abs(arc.SweepDegrees) > 180);
            Assert.Equal((flags & 2) != 0, arc.SweepDegrees > 0);
        });

    [Fact]
    public void Quarter_circle_goes_through_its_known_middle()
    {
        CurveSegment arc = Arc(new(10, 0), new(0, 10), 10, 10, 0, 2).ToSegment();
        CurvePoint middle = arc.PointAt(0.5);
        Assert.Equal(10 / Math.Sqrt(2), middle.XMillimeters, 9);
        Assert.Equal(10 / Math.Sqrt(2), middle.YMillimeters, 9);
    }

    [Fact]
    public void Radii_too_small_are_widened_to_half_the_distance()
    {
        ArcSegment arc = Assert.IsType<ArcSegment>(Arc(new(0, 0), new(100, 0), 5, 5, 0, 2).ToSegment());
        Assert.Equal(50, arc.CosineAxis.NormMillimeters, 9);
        Assert.Equal(50, arc.Center.XMillimeters, 9);
    }

    [Fact]
    public void Arc_without_a_radius_is_straight() =>
        Assert.IsType<StraightSegment>(Arc(new(0, 0), new(100, 0), 0, 5, 0, 2).ToSegment());

    [Fact]
    public void Sheared_arc_is_the_image_of_its_points()
    {
        AffineMap shear = new(1, 0.5, 0.2, 2, 7, -3);
        CurveSegment arc = Arc(new(10, 0), new(0, 20), 30, 15, 25, 2).ToSegment();
        CurveSegment image = arc.Mapped(shear);
        for (int i = 0; i <= 10; i++)
            Assert.InRange((image.PointAt(i / 10.0) - shear.Apply(arc.PointAt(i / 10.0))).NormMillimeters, 0, 1e-9);
    }

    private static EndpointArc Arc(CurvePoint start, CurvePoint end, double rx, double ry, double rotation, int flags) => new()
    {
        Start = start,
        End = end,
        RadiusXMillimeters = rx,
        RadiusYMillimeters = ry,
        RotationDegrees = rotation,
        Size = (flags & 1) != 0 ? ArcSize.Large : ArcSize.Small,
        Sense = (flags & 2) != 0 ? ArcSense.Rising : ArcSense.Falling,
    };

    private static double Equation(CurvePoint fromCenter, double rx, double ry, double rotationDegrees)
    {
        double radians = rotationDegrees * Math.PI / 180;
        double u = Angle.Cos(radians) * fromCenter.XMillimeters + Angle.Sin(radians) * fromCenter.YMillimeters;
        double v = -Angle.Sin(radians) * fromCenter.XMillimeters + Angle.Cos(radians) * fromCenter.YMillimeters;
        return u * u / (rx * rx) + v * v / (ry * ry);
    }
}
