using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry.Curves;
using Nestmark.Input;
using Nestmark.Input.Svg;

namespace Nestmark.Tests.Input;

/// <summary>Path data against the grammar of SVG 2, chapter Paths; references/formats.md 3.2.</summary>
public sealed class PathDataReaderTests
{
    [Theory]
    [InlineData("M 1 2 L 3 4", "1 2 > 3 4")]
    [InlineData("m1,2 2,2", "1 2 > 3 4")]
    [InlineData("M100-200 0.6.5", "100 -200 > 0.6 0.5")]
    [InlineData("M0 0 1e1 2E-1", "0 0 > 10 0.2")]
    [InlineData("M0 0h5v5H0V0", "0 0 > 5 0 > 5 5 > 0 5 > 0 0")]
    [InlineData("M0 0H5 6 7", "0 0 > 5 0 > 6 0 > 7 0")]
    [InlineData("M0 0 5 0 5 5z", "0 0 > 5 0 > 5 5 > 0 0 z")]
    [InlineData("M0 0 5 0 5 5z l-1 -1", "0 0 > 5 0 > 5 5 > 0 0 z | 0 0 > -1 -1")]
    [InlineData("m5 5 1 0 0 1zm2 2 1 0", "5 5 > 6 5 > 6 6 > 5 5 z | 7 7 > 8 7")]
    [InlineData("M0 0C1 1 2 1 3 0S5-1 6 0", "0 0 ~(1 1)(2 1) 3 0 ~(4 -1)(5 -1) 6 0")]
    [InlineData("M0 0S5-1 6 0", "0 0 ~(0 0)(5 -1) 6 0")]
    [InlineData("M0 0L3 0S5-1 6 0", "0 0 > 3 0 ~(3 0)(5 -1) 6 0")]
    [InlineData("M0 0c1 1 2 1 3 0s2-1 3 0", "0 0 ~(1 1)(2 1) 3 0 ~(4 -1)(5 -1) 6 0")]
    [InlineData("M0 0Q3 3 6 0T12 0", "0 0 ~(2 2)(4 2) 6 0 ~(8 -2)(10 -2) 12 0")]
    [InlineData("M0 0q3 3 6 0t6 0", "0 0 ~(2 2)(4 2) 6 0 ~(8 -2)(10 -2) 12 0")]
    [InlineData("M0 0T6 0", "0 0 ~(0 0)(2 0) 6 0")]
    [InlineData("M1 1a1 1 0 01.5.5", "1 1 o 1.5 1.5")]
    [InlineData("M1 1a1 1 0 1110 0", "1 1 o 11 1")]
    [InlineData("M1 1A0 1 0 1 1 5 5", "1 1 > 5 5")]
    [InlineData("M1 1A3 3 0 1 1 1 1 L 2 2", "1 1 > 2 2")]
    [InlineData("M 7 7", "")]
    [InlineData("", "")]
    [InlineData(" \n\tM 1 2\nL 3 , 4 ", "1 2 > 3 4")]
    public void Segments_are_read(string data, string expected)
    {
        Reading<ImmutableArray<SubPath>> reading = PathDataReader.Read(data);
        Assert.Null(reading.Fault);
        Assert.Equal(expected, string.Join(" | ", reading.Value.Select(Shown)));
    }

    [Theory]
    [InlineData("L 1 2", 1)]
    [InlineData("M 1", 4)]
    [InlineData("M 1 2 L 3 x", 11)]
    [InlineData("M 1 2 K 3 4", 7)]
    [InlineData("M 1 2 A 1 1 0 2 0 3 3", 15)]
    [InlineData("M 1 2 L 3 4 5", 14)]
    [InlineData("M 1 2 L 1e999 4", 14)]
    [InlineData("M 1 2 L NaN 4", 9)]
    [InlineData("M 1 2 ; L 3 4", 7)]
    public void Broken_data_is_refused_with_its_position(string data, int position)
    {
        Fault? fault = PathDataReader.Read(data).Fault;
        Assert.NotNull(fault);
        Assert.Contains($"at character {position}:", fault.What, StringComparison.Ordinal);
    }

    private static string Shown(SubPath path) =>
        Shown(path.Start) + string.Concat(path.Segments.Select(Shown)) + (path.Form == SubPathForm.Closed ? " z" : "");

    private static string Shown(CurveSegment segment) => segment switch
    {
        CubicSegment cubic => $" ~({Shown(cubic.StartControl)})({Shown(cubic.EndControl)}) {Shown(cubic.End)}",
        ArcSegment => $" o {Shown(segment.End)}",
        _ => $" > {Shown(segment.End)}",
    };

    private static string Shown(CurvePoint point) => string.Create(CultureInfo.InvariantCulture, $"{point.XMillimeters:0.###} {point.YMillimeters:0.###}");
}
