using BenchmarkDotNet.Attributes;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;
using Nestmark.Nesting;

namespace Nestmark.Bench.Speed;

/// <summary>No-fit regions of a back and an upper sleeve.</summary>
public class NoFitBenchmarks
{
    private Polygon _back = null!;
    private Polygon _sleeve = null!;
    private Polygon _simpleBack = null!;
    private Polygon _simpleSleeve = null!;

    [GlobalSetup]
    public void Prepare()
    {
        LayTask task = SpeedData.Coat();
        _back = Line(task, "back");
        _sleeve = Line(task, "upper sleeve");
        _simpleBack = OutwardSimplification.Of(_back, Length.FromMillimeters(0.3));
        _simpleSleeve = OutwardSimplification.Of(_sleeve, Length.FromMillimeters(0.3));
    }

    [Benchmark(Description = "no-fit region, true outlines")]
    public NoFitRegion TrueOutlines() => NoFitPolygon.Of(_back, _sleeve);

    [Benchmark(Description = "no-fit region, simplified outlines")]
    public NoFitRegion Simplified() => NoFitPolygon.Of(_simpleBack, _simpleSleeve);

    private static Polygon Line(LayTask task, string name) => task.Demands.First(demand => demand.Piece.Name == name).Piece.CuttingLine;
}
