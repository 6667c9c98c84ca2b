using CsCheck;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Tests.Nesting;

/// <summary>Lay tasks for the tests, by hand and at random.</summary>
internal static class Tasks
{
    /// <summary>Random tasks: open or folded, with pieces for the fold and flipped copies, every kind of nap, tilt and gap.</summary>
    public static Gen<LayTask> Random { get; } =
        from count in Gen.Int[2, 9]
        from shapes in Shapes.Star.Array[count]
        from copies in Gen.Int[1, 3].Array[count]
        from kinds in Gen.Int[0, 3].Array[count]
        from folded in Gen.Bool
        from nap in Gen.Int[0, 2]
        from tilt in Gen.Int[0, 2].Select(choice => choice == 2 ? 2.0 : 0)
        from gap in Gen.Int[0, 2].Select(choice => choice == 2 ? 2 : 0)
        select Of(shapes, copies, kinds, folded ? LayForm.Folded : LayForm.Open, (Nap)nap, tilt, Length.FromMillimeters(gap));

    /// <summary>A random task, places for its items and which of them move afterward.</summary>
    /// <param name="farthestMicrometers">The farthest place along the lay.</param>
    public static Gen<(LayTask Task, double[] Places, int[] Moved)> Strewn(double farthestMicrometers) =>
        from task in Random
        from places in Gen.Double[0, farthestMicrometers].Array[200]
        from moved in Gen.Int[0, 99].Array[10]
        select (task, places, moved);

    /// <summary>Settings that stop by steps.</summary>
    public static SearchSettings Steps(long stepsPerThread, int threads = 1, long seed = 1) =>
        new(seed, threads, new StepStop(stepsPerThread), _ => { }, CancellationToken.None);

    /// <summary>A piece whose seam line is its cutting line.</summary>
    public static Piece PieceOf(string name, Polygon outline, Segment? fold = null) => new()
    {
        Name = name,
        Size = "",
        Cut = new CutQuantity(1, fold is null ? CutKind.Copies : CutKind.OnFold),
        SeamLine = outline,
        CuttingLine = outline,
        Grainline = new Segment(Point.Origin, new Point(1000, 0)),
        FoldEdge = fold,
        CenterLine = null,
        Corners = [],
        Edges = [],
        Notches = [],
        Lines = [],
        Marks = [],
        Grain = GrainRule.Along,
        Tilt = null,
    };

    /// <summary>Demands for some copies of a piece.</summary>
    public static IEnumerable<Demand> Demands(Piece piece, int copies, params Turn[] turns) =>
        Enumerable.Range(1, copies).Select(copy => new Demand(piece, "", copy, 1, FoldContact.Free, [.. turns], ""));

    /// <summary>An open lay of some depth.</summary>
    public static LayTask Open(double depthMillimeters, IEnumerable<Demand> demands)
    {
        Length depth = Length.FromMillimeters(depthMillimeters);
        return new LayTask(LaySurface.Open(depth), Length.Zero, [.. demands], []);
    }

    private static LayTask Of(Polygon[] shapes, int[] copies, int[] kinds, LayForm form, Nap nap, double tiltDegrees, Length gap)
    {
        Length depth = Length.FromMillimeters(150);
        LaySurface surface = form == LayForm.Folded
            ? LaySurface.Folded(depth * 2)
            : LaySurface.Open(depth);
        List<Demand> demands = [];
        for (int i = 0; i < shapes.Length; i++)
        {
            string group = nap == Nap.BySize ? (i % 2 == 0 ? "S" : "M") : "";
            bool onFold = form == LayForm.Folded && kinds[i] == 0;
            Piece piece = onFold ? OnFold(i, shapes[i]) : PieceOf($"piece{i}", shapes[i]);
            for (int copy = 1; copy <= copies[i]; copy++)
            {
                Facing facing = kinds[i] == 1 && copy % 2 == 0 ? Facing.Flipped : Facing.Plain;
                demands.Add(new Demand(piece, group, copy, surface.Bands[0].Layers, onFold ? FoldContact.OnFold : FoldContact.Free,
                    onFold ? [.. FoldTurns(nap)] : [.. Turns(nap, facing, tiltDegrees)], group));
            }
        }
        return new LayTask(surface, gap, [.. demands], []);
    }

    private static IEnumerable<Turn> FoldTurns(Nap nap) =>
        nap == Nap.OneWay ? [Turn.None] : [Turn.None, new Turn(Angle.Half, Facing.Flipped)];

    private static IEnumerable<Turn> Turns(Nap nap, Facing facing, double tiltDegrees)
    {
        foreach (Angle way in nap == Nap.OneWay ? [Angle.Zero] : (Angle[])[Angle.Zero, Angle.Half])
        {
            yield return new Turn(way, facing);
            if (tiltDegrees == 0)
                continue;
            yield return new Turn(way + Angle.FromDegrees(tiltDegrees), facing);
            yield return new Turn(way - Angle.FromDegrees(tiltDegrees), facing);
        }
    }

    /// <summary>The part of a shape above y = 0 and a straight edge on it.</summary>
    private static Piece OnFold(int index, Polygon shape)
    {
        long width = shape.Bounds.Width;
        Polygon half = Polygon.Of([new(0, 0), new(width, 0), new(width * 3 / 4, width / 2), new(width / 3, width * 2 / 5), new(width / 8, width / 2)]);
        return PieceOf($"fold{index}", half, new Segment(new(0, 0), new(width, 0)));
    }
}
