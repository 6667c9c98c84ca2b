using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Nestmark.Bench.Garments;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Bench.Speed;

/// <summary>Cutting lines: the allowances of a whole coat, and a plain offset of one outline.</summary>
public class AllowanceBenchmarks
{
    private readonly IReadOnlyList<GarmentPattern> _patterns = GarmentPatterns.Coat;
    private Polygon _back = null!;

    [GlobalSetup]
    public void Prepare() => _back = SpeedData.Coat().Demands[0].Piece.CuttingLine;

    [Benchmark(Description = "15 pieces with allowances and notches")]
    public ImmutableArray<Piece> Allowances() => GarmentMaking.Make(_patterns, 0, 1);

    [Benchmark(Description = "offset of one outline by 2.5 mm")]
    public Polygon Grow() => Offset.Grow(_back, Length.FromMillimeters(2.5));
}
