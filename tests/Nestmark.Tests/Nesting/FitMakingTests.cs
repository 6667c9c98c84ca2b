using System.Collections.Immutable;
using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>Pieces from leftovers, judged with NetTopologySuite.</summary>
public sealed class FitMakingTests
{
    private const string Sleeve = "0 0, 500 0, 520 90, 500 180, 0 150";

    [Fact]
    public void Whatever_is_placed_lies_on_a_leftover_and_beside_the_others() =>
        (from remnants in Shapes.Star.Array[1, 3]
         from shapes in Shapes.Star.Array[1, 6]
         from nap in Gen.Int[0, 2]
         select (remnants, shapes, nap)).Check(80, (remnants, shapes, nap) =>
         {
             RemnantTable table = RemnantTable.Of([.. remnants.Select((shape, i) => RemnantOf($"r{i}", Scaled(shape, 3)))]);
             LayTask task = TaskFor(table, (Nap)nap, [.. shapes.Select((shape, i) => PieceOf($"p{i}", shape, i % 2 == 0 ? "1 pair" : "1"))]);
             Fit fit = FitMaking.Make(task, table.Length, Tasks.Steps(60));
             Assert.Empty(Faults(table, fit.Marker));
             Assert.Equal(task.Demands.Length, fit.Marker.Placements.Length + fit.LeftOut.Length);
         });

    // An L of 110 x 40 cm and 40 x 40 cm; the sleeves are 52 x 18 cm: two fit beside each other only round the corner.
    [Fact]
    public void Two_sleeves_come_out_of_an_L()
    {
        RemnantTable table = RemnantTable.Of([RemnantOf("L", Shapes.Of("0 0, 1070 0, 1070 185, 550 185, 550 370, 0 370"))]);
        Fit fit = FitMaking.Make(TaskFor(table, Nap.None, [PieceOf("sleeve", Shapes.Of(Sleeve), "1 pair"), PieceOf("band", Shapes.Of("0 0, 500 0, 500 170, 0 170"), "1")]), table.Length, Tasks.Steps(3000));
        Assert.Empty(fit.LeftOut);
        Assert.Empty(Faults(table, fit.Marker));
    }

    [Fact]
    public void One_that_is_too_short_leaves_the_smaller_piece_out()
    {
        RemnantTable table = RemnantTable.Of([RemnantOf("scrap", Shapes.Of("0 0, 530 0, 530 300, 0 300"))]);
        Fit fit = FitMaking.Make(TaskFor(table, Nap.None, [PieceOf("small", Shapes.Of("0 0, 400 0, 400 180, 0 180"), "1"), PieceOf("large", Shapes.Of(Sleeve), "1")]), table.Length, Tasks.Steps(500));
        Assert.Equal(["large"], fit.Marker.Placements.Select(placement => placement.Piece.Name));
        Assert.Equal([0], fit.LeftOut.AsEnumerable());
    }

    [Fact]
    public void A_hole_is_kept_free()
    {
        Polygon holed = Polygon.WithHoles(Shapes.Of("0 0, 600 0, 600 200, 0 200").Outer, [Shapes.Of("280 80, 320 80, 320 120, 280 120").Outer]);
        RemnantTable table = RemnantTable.Of([RemnantOf("holed", holed)]);
        Fit two = FitMaking.Make(TaskFor(table, Nap.None, [PieceOf("square", Shapes.Of("0 0, 270 0, 270 190, 0 190"), "2")]), table.Length, Tasks.Steps(500));
        Fit one = FitMaking.Make(TaskFor(table, Nap.None, [PieceOf("long", Shapes.Of("0 0, 330 0, 330 190, 0 190"), "1")]), table.Length, Tasks.Steps(500));
        Assert.Empty(two.LeftOut);
        Assert.Empty(Faults(table, two.Marker));
        Assert.Single(one.LeftOut);
    }

    [Fact]
    public void Several_leftovers_are_used_together()
    {
        RemnantTable table = RemnantTable.Of([RemnantOf("one", Shapes.Of("0 0, 530 0, 530 190, 0 190")), RemnantOf("two", Shapes.Of("0 0, 540 0, 540 200, 0 200"))]);
        Fit fit = FitMaking.Make(TaskFor(table, Nap.OneWay, [PieceOf("sleeve", Shapes.Of(Sleeve), "1 pair")]), table.Length, Tasks.Steps(500));
        Assert.Empty(fit.LeftOut);
        Assert.Equal(["one", "two"], fit.Marker.Placements.Select(placement => table.Under(placement).Name).Order());
    }

    [Fact]
    public void The_same_seed_and_steps_give_the_same_layout()
    {
        RemnantTable table = RemnantTable.Of([RemnantOf("scrap", Shapes.Of("0 0, 700 0, 650 400, 0 380"))]);
        LayTask task = TaskFor(table, Nap.None, [PieceOf("sleeve", Shapes.Of(Sleeve), "2 pairs")]);
        Assert.Equal(Offsets(), Offsets());

        IEnumerable<Point> Offsets() => FitMaking.Make(task, table.Length, Tasks.Steps(200)).Marker.Placements.Select(placement => placement.Offset).ToArray();
    }

    private static LayTask TaskFor(RemnantTable table, Nap nap, ImmutableArray<Piece> pieces)
    {
        Cloth cloth = TestCloths.Open with { Nap = nap, Width = Length.FromMeters(4) };
        return LayRules.TaskFor(cloth, [.. pieces.Select(piece => new PieceOrder(piece, "", 1))]) with { Surface = table.Surface, Obstacles = table.Obstacles };
    }

    private static List<string> Faults(RemnantTable table, Marker marker)
    {
        List<string> faults = [];
        NetTopologySuite.Geometries.Geometry[] shapes = [.. marker.Placements.Select(placement => Shapes.ToNts(placement.CuttingLine))];
        for (int i = 0; i < shapes.Length; i++)
        {
            Remnant remnant = table.Under(marker.Placements[i]);
            Point at = table.Places.Single(place => place.Remnant == remnant).At;
            if (shapes[i].Difference(Shapes.ToNts(remnant.Area.Shifted(at))).Area > 2 * shapes[i].Length)
                faults.Add($"{marker.Placements[i].Piece.Name} reaches beyond {remnant.Name}");
            for (int j = i + 1; j < shapes.Length; j++)
            {
                if (shapes[i].Intersection(shapes[j]).Area > 2 * shapes[i].Length)
                    faults.Add($"{marker.Placements[i].Piece.Name} overlaps {marker.Placements[j].Piece.Name}");
            }
        }
        return faults;
    }

    private static Remnant RemnantOf(string name, Polygon area) => new(name, "shell", area.Shifted(new Point(-area.Bounds.MinX, -area.Bounds.MinY)));

    private static Polygon Scaled(Polygon polygon, int factor) => polygon.Mapped(point => new Point(point.X * factor, point.Y * factor));

    private static Piece PieceOf(string name, Polygon shape, string cut) =>
        TestPieces.Of(name, string.Join(", ", shape.Outer.Select(point => FormattableString.Invariant($"{point.XMillimeters} {point.YMillimeters}"))), cut);
}
