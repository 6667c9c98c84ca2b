using Nestmark.Geometry;
using Nestmark.Nesting.Search;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting.Search;

public sealed class CrowdingTests
{
    // Judge: the definition, circle by circle of everything that lies there, worked out anew for every place.
    [Fact]
    public void It_is_what_all_circles_make_of_a_place_also_after_moves() => Tasks.Strewn(1_000_000).Check(40, lay =>
    {
        SearchProblem problem = SearchProblem.Of(lay.Task, Length.Zero);
        LayState state = problem.EmptyState();
        state.Length = 600_000;
        for (int item = 0; item < problem.PieceCount; item++)
            (state.Way[item], state.X[item], state.Y[item]) = (item % 7 == 6 ? -1 : 0, lay.Places[item], lay.Places[item + 60] / 7);
        Crowding crowding = new(problem);
        crowding.Look(state);
        Compare(problem, state, crowding, lay.Places);
        foreach (int moved in lay.Moved)
        {
            int item = moved % problem.PieceCount;
            crowding.Lift(item);
            (state.Way[item], state.X[item]) = (problem.Items[item].Ways.Length - 1, lay.Places[moved + 100]);
            crowding.Put(item, state.Way[item], state.X[item], state.Y[item]);
        }
        Compare(problem, state, crowding, lay.Places);
        state.Length = 900_000;
        crowding.Look(state);
        Compare(problem, state, crowding, lay.Places);
        for (int item = 0; item < problem.PieceCount; item++)
            state.Way[item] = -1;
        crowding.Look(state);
        Compare(problem, state, crowding, lay.Places);
    });

    // What it is for: where two rectangles overlap much it says more than where they overlap a little, and nothing where they lie apart by more than they are long.
    [Fact]
    public void Deeper_overlaps_are_more_crowded()
    {
        Piece rectangle = Tasks.PieceOf("a", Polygon.Rectangle(Length.FromMillimeters(200), Length.FromMillimeters(100)));
        SearchProblem problem = SearchProblem.Of(Tasks.Open(500, Tasks.Demands(rectangle, 2, Turn.None)), Length.Zero);
        LayState state = problem.EmptyState();
        (state.Length, state.Way[0], state.X[0], state.Y[0]) = (2_000_000, 0, 500_000, 0);
        Crowding crowding = new(problem);
        crowding.Look(state);
        int[] crowds = [.. new[] { 500_000, 600_000, 700_000, 1_500_000 }.Select(x => At(problem, crowding, 1, x, 0))];
        Assert.True(crowds[0] > crowds[1] && crowds[1] > crowds[2], string.Join(", ", crowds));
        Assert.Equal(0, crowds[3]);
    }

    private static int At(SearchProblem problem, Crowding crowding, int item, double x, double y) =>
        crowding.At(crowding.ShapeOf(problem.Items[item].Ways[0].Shape), (float)(x * crowding.CellsPerMicrometer), (float)(y * crowding.CellsPerMicrometer));

    private static void Compare(SearchProblem problem, LayState state, Crowding crowding, double[] places)
    {
        for (int item = 0; item < problem.PieceCount; item++)
        {
            SearchWay way = problem.Items[item].Ways[0];
            Box box = problem.BoundsOf(way.Shape);
            double x = Math.Clamp(places[item + 30], -box.MinX, Math.Max(-box.MinX, state.Length - box.MaxX));
            double y = Math.Clamp(places[item + 90] / 7, -box.MinY, Math.Max(-box.MinY, problem.DepthMicrometers - box.MaxY));
            double expected = Expected(problem, state, crowding.CellsPerMicrometer, way.Shape, x, y);
            Assert.InRange(At(problem, crowding, item, x, y), expected - 8 * problem.Items.Length, expected + 8 * problem.Items.Length);
        }
    }

    private static double Expected(SearchProblem problem, LayState state, double scale, int shape, double x, double y)
    {
        double largest = Enumerable.Range(0, problem.ShapeCount).Max(any => problem.Circles.Of(any).Max(circle => circle.Radius)) * scale;
        double sum = 0;
        foreach ((double X, double Y, double Radius) circle in problem.Circles.Of(shape))
        {
            double[] sizes = [largest, largest / 2, largest / 4];
            double radius = sizes.MinBy(size => Math.Abs(Math.Log2(size / (circle.Radius * scale))));
            double cellX = Math.Floor((float)((float)(x * scale) + (float)(circle.X * scale))) + 0.5;
            double cellY = Math.Floor((float)((float)(y * scale) + (float)(circle.Y * scale))) + 0.5;
            for (int other = 0; other < problem.Items.Length; other++)
            {
                bool isObstacle = other >= problem.PieceCount;
                if (!isObstacle && state.Way[other] < 0)
                    continue;
                int still = problem.Items[other].Ways[isObstacle ? 0 : state.Way[other]].Shape;
                double originX = isObstacle ? 0 : Math.Round(state.X[other] * scale);
                double originY = isObstacle ? 0 : Math.Round(state.Y[other] * scale);
                foreach ((double X, double Y, double Radius) its in problem.Circles.Of(still))
                {
                    double away = Math.Sqrt(Math.Pow(cellX - originX - its.X * scale, 2) + Math.Pow(cellY - originY - its.Y * scale, 2));
                    sum += 256 * Math.Max(0, radius + its.Radius * scale - away) * Math.Min(radius, its.Radius * scale) * problem.SizeOf(still) / problem.MeanSizeMicrometers;
                }
            }
        }
        return sum;
    }
}
