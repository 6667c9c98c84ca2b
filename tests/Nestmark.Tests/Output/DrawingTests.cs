using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using Nestmark.Output.Drawings;
using Nestmark.Output.Pdf;

namespace Nestmark.Tests.Output;

public sealed class DrawingTests
{
    private static readonly Gen<ImmutableArray<Spot>> Stars = Gen.Select(Gen.Double[5, 60].Array[3, 14], Gen.Double[0, 6]).Select((radii, start) =>
        radii.Select((radius, i) => new Spot(
            radius * Nestmark.Geometry.Angle.Cos(start + i * 2 * Math.PI / radii.Length),
            radius * Nestmark.Geometry.Angle.Sin(start + i * 2 * Math.PI / radii.Length))).ToImmutableArray());

    // Judge: NetTopologySuite. The area of a shape is the sum of its hatch lines times their distance, roughly.
    [Fact]
    public void Hatch_lines_lie_inside_and_cover_the_shape() => Stars.Check(100,
        star =>
        {
            Polygon shape = ShapeOf(star);
            LineString[] lines = [.. Hatching.Of([star], 0.5).Select(line => new LineString([.. line.Select(AsCoordinate)]))];
            Assert.All(lines, line => Assert.True(shape.Buffer(1e-6).Covers(line)));
            Assert.Equal(shape.Area, lines.Sum(line => line.Length) * 0.5, Math.Max(5, shape.Area * 0.05));
        });

    [Fact]
    public void Hatch_lines_leave_holes_free()
    {
        ImmutableArray<Spot> outer = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)];
        ImmutableArray<Spot> hole = [new(4, 4), new(4, 6), new(6, 6), new(6, 4)];
        Assert.All(Hatching.Of([outer, hole], 0.3), line => Assert.False(IsInHole(line[0].Toward(line[1], 0.5))));

        static bool IsInHole(Spot spot) => spot.XMillimeters is > 4 and < 6 && spot.YMillimeters is > 4 and < 6;
    }

    [Fact]
    public void A_label_lies_inside_its_shape_and_off_the_obstacles() => Stars.Check(100,
        star =>
        {
            (Spot, Spot) obstacle = (new Spot(-60, 0), new Spot(60, 0));
            LabelPlace? place = new LabelRoom([star], Area.Around(star), [obstacle]).PlaceFor(new TextBlock([new TextLine("front M", 4)]), 0.2);
            if (place is null)
                return;
            Polygon label = ShapeOf([.. place.Area.Corners]);
            Assert.True(ShapeOf(star).Covers(label));
            Assert.False(label.Intersects(new LineString([AsCoordinate(obstacle.Item1), AsCoordinate(obstacle.Item2)])));
        });

    [Fact]
    public void Lines_and_rings_of_one_figure_are_not_joined_in_PDF()
    {
        ImmutableArray<Spot> outer = [new(20, 20), new(60, 20), new(60, 60), new(20, 60)];
        ImmutableArray<Spot> hole = [new(30, 30), new(30, 50), new(50, 50), new(50, 30)];
        Drawing drawing = new();
        drawing.Add(new PathFigure(Role.CuttingLine, [outer, hole], PathEnds.Closed, new Ink(0.5), 0.8));
        drawing.Lines(Role.WrongSide, new Ink(0.2), [[new(70, 20), new(80, 30)], [new(70, 40), new(80, 50)]]);
        PrintedPage page = PrintedPage.Read(PdfFile.Write([new PdfSheet("one", 100, 90, drawing)], "one", "nestmark-job:0"))[0];
        Assert.Equal((100, 90), (Math.Round(page.WidthMillimeters, 3), Math.Round(page.HeightMillimeters, 3)));
        Assert.Equal([5, 5, 2, 2], page.Lines.Select(line => line.Count));
        Assert.Equal((70, 40), (Math.Round(page.Lines[3][0].X, 3), Math.Round(page.Lines[3][0].Y, 3)));
    }

    // A strip 6 mm wide and 100 mm high holds the name only on its side.
    [Fact]
    public void A_label_is_turned_where_only_that_fits()
    {
        ImmutableArray<Spot> strip = [new(0, 0), new(6, 0), new(6, 100), new(0, 100)];
        LabelPlace? place = new LabelRoom([strip], Area.Around(strip), []).PlaceFor(new TextBlock([new TextLine("front M", 3)]), 1);
        Assert.Equal(LabelTurn.Quarter, place!.Turn);
    }

    [Fact]
    public void A_label_that_fits_nowhere_is_not_placed()
    {
        ImmutableArray<Spot> dot = [new(0, 0), new(1, 0), new(1, 1), new(0, 1)];
        Assert.Null(new LabelRoom([dot], Area.Around(dot), []).PlaceFor(new TextBlock([new TextLine("front M", 3)]), 0.5));
    }

    private static Polygon ShapeOf(ImmutableArray<Spot> ring) => new(new LinearRing([.. ring.Select(AsCoordinate), AsCoordinate(ring[0])]));

    private static Coordinate AsCoordinate(Spot spot) => new(spot.XMillimeters, spot.YMillimeters);
}
