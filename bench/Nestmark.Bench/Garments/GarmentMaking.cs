using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Nesting.Search;
using Nestmark.Pieces;

namespace Nestmark.Bench.Garments;

/// <summary>Makes pieces from patterns through the program's own allowances: a size, and a little chance from a seed, so that no two seeds are alike.</summary>
internal static class GarmentMaking
{
    private const double SeamMillimeters = 10;
    private const double LengthGrowth = 0.012;
    private const double WidthGrowth = 0.04;

    /// <summary>Every piece in one size.</summary>
    /// <param name="patterns">What to make.</param>
    /// <param name="size">0 for the smallest; each adds 1.2 % to the length and 4 % to the width.</param>
    /// <param name="seed">Moves corners by up to 3 mm and alters curves by up to 15 %; the same for all sizes.</param>
    /// <exception cref="InvalidOperationException">A pattern that cannot be made, which is a fault of this bench.</exception>
    public static ImmutableArray<Piece> Make(IReadOnlyList<GarmentPattern> patterns, int size, long seed) =>
        [.. patterns.Select((pattern, index) => Make(pattern, size, new RandomStream(seed, index)))];

    private static Piece Make(GarmentPattern pattern, int size, RandomStream random)
    {
        CurveSegment[] path = Path(Corners(pattern, size, random));
        PieceResult result = PieceMaking.Make(new PieceDraft
        {
            Name = pattern.Name,
            Size = SizeName(size),
            Outline = [.. Flattening.Closed(path).Select(vertex => vertex.Kind == VertexKind.Joint ? vertex with { Kind = VertexKind.Marked } : vertex)],
            Meaning = OutlineMeaning.SeamLine,
            Cut = pattern.Cut,
            Seam = Length.FromMillimeters(SeamMillimeters),
            Edges = pattern.HemMillimeters > 0 ? [new EdgeAllowance("B", "C", Length.FromMillimeters(pattern.HemMillimeters), AllowanceEnds.Reflected)] : [],
            PointLimitRatio = 2.5,
            Grainline = null,
            FoldLine = null,
            FoldEdge = pattern.Cut.Kind == CutKind.OnFold ? "A-B" : "",
            Notches = [.. path.Where(segment => segment is CubicSegment).Select((segment, i) => new PieceMark($"n{i + 1}", segment.PointAt(0.4).Rounded()))],
            Lines = [],
            Marks = [],
            Grain = GrainRule.Along,
            Tilt = null,
        });
        return result.Piece ?? throw new InvalidOperationException($"{pattern.Name}: {result.Faults[0].What}");
    }

    /// <summary>How a size is called.</summary>
    public static string SizeName(int size) => (34 + 2 * size).ToString(CultureInfo.InvariantCulture);

    private static List<Corner> Corners(GarmentPattern pattern, int size, RandomStream random)
    {
        double lengthRatio = 1 + LengthGrowth * size;
        double widthRatio = 1 + WidthGrowth * size;
        List<Corner> corners = [];
        foreach (string text in pattern.Outline.Split(','))
        {
            double[] numbers = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
            bool isOnFold = pattern.Cut.Kind == CutKind.OnFold && numbers[1] == 0;
            double x = (numbers[0] + random.Between(-3, 3)) * lengthRatio;
            double y = isOnFold ? 0 : (numbers[1] + random.Between(-3, 3)) * widthRatio;
            double swell = random.Between(0.85, 1.15);
            corners.Add(new Corner(new CurvePoint(x, y), numbers.Length > 2 ? numbers[2] * swell : 0, numbers.Length > 2 ? numbers[3] * swell : 0));
        }
        return corners;
    }

    private static CurveSegment[] Path(List<Corner> corners) =>
        [.. corners.Select((corner, i) => Edge(corner, corners[(i + 1) % corners.Count].Place))];

    /// <summary>The edge from a corner on: straight, or a cubic whose controls lie beside its thirds.</summary>
    private static CurveSegment Edge(Corner corner, CurvePoint end)
    {
        if (corner.First == 0 && corner.Second == 0)
            return new StraightSegment(corner.Place, end);
        CurvePoint along = end - corner.Place;
        CurvePoint outward = new CurvePoint(along.YMillimeters, -along.XMillimeters) * (1 / along.NormMillimeters);
        return new CubicSegment(
            corner.Place,
            corner.Place + along * (1 / 3.0) + outward * (corner.First * 4 / 3),
            corner.Place + along * (2 / 3.0) + outward * (corner.Second * 4 / 3),
            end);
    }

    private readonly record struct Corner(CurvePoint Place, double First, double Second);
}
