using BenchmarkDotNet.Attributes;
using Nestmark.Nesting.NoFit;
using Nestmark.Nesting.Search;

namespace Nestmark.Bench.Speed;

/// <summary>What the search does most: judging one pair, and placing one piece anew in a lay that is too short.</summary>
public class PlacingBenchmarks
{
    private PairSide _side;
    private PiecePlacer _placer = null!;
    private LayState _tight = null!;
    private LayState _state = null!;
    private double _x;
    private double _y;

    [GlobalSetup]
    public void Prepare()
    {
        SearchProblem problem = SpeedData.Rough(SpeedData.Coat());
        int shape = problem.Items[0].Ways[0].Shape;
        int other = problem.Items[1].Ways[0].Shape;
        _side = problem.Sides.Of(shape, other);
        (PairFit fit, Mirroring seen) = problem.Sides.FitOf(shape, other);
        (_x, _y) = (seen.SignX * (fit.MinX * 3 + fit.MaxX) / 4, seen.SignY * (fit.MinY + fit.MaxY) / 2);
        _tight = SpeedData.Greedy(problem);
        for (int item = 0; item < _tight.Count; item++)
            _tight.X[item] *= 0.95;
        _tight.Length *= 0.95;
        new SeverityTable(problem).Fill(_tight);
        _state = _tight.Copy();
        _placer = new PiecePlacer(problem, SearchTuning.Default, new RandomStream(1, 1), new PairTable(_tight.Count, 1));
    }

    [Benchmark(Description = "severity of one pair")]
    public float Severity() => _side.At(_x, _y);

    [Benchmark(Description = "one placement search among 25")]
    public double Place()
    {
        _state.Take(_tight);
        _placer.Look(_state);
        _placer.Place(_state, [], 0);
        return _state.X[0];
    }
}
