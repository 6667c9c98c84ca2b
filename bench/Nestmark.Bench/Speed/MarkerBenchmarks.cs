using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Nestmark.Nesting;
using Nestmark.Nesting.Verification;

namespace Nestmark.Bench.Speed;

/// <summary>Whole markers: judging one of 150 pieces, and the greedy pass with all its no-fit regions made anew.</summary>
public class MarkerBenchmarks
{
    private LayTask _coat = null!;
    private LayTask _studio = null!;
    private Marker _marker = null!;

    [GlobalSetup]
    public void Prepare()
    {
        _coat = SpeedData.Coat();
        _studio = SpeedData.Studio();
        _marker = MarkerMaking.Make(_studio, new SearchSettings(1, 2, new StepStop(0), _ => { }, CancellationToken.None));
    }

    [Benchmark(Description = "verifier, 150 pieces")]
    public ImmutableArray<string> Verify() => MarkerVerifier.Violations(_studio, _marker);

    [Benchmark(Description = "greedy pass, 25 pieces, 1 thread")]
    public double GreedyCoat() => SpeedData.Greedy(SpeedData.Rough(_coat)).Length;

    [Benchmark(Description = "greedy pass, 150 pieces, 1 thread")]
    public double GreedyStudio() => SpeedData.Greedy(SpeedData.Rough(_studio)).Length;
}
