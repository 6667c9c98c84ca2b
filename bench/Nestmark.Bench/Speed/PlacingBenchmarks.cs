using BenchmarkDotNet.Attributes;
using Nestmark.Nesting.NoFit;
using Nestmark.Nesting.Search;

namespace Nestmark.Bench.Speed;

/// <summary>What the search does most: judging one pair, and placing one piece anew in a lay that is too short.</summary>
public class PlacingBenchmarks
{
    private PairFit _fit = null!;
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
        _fit = problem.Sides[problem.Sides.IndexOf(shape, problem.Items[1].Ways[0].Shape)].Fit;
        (_x, _y) = ((_fit.MinX * 3 + _fit.MaxX) / 4, (_fit.MinY + _fit.MaxY) / 2);
        _tight = SpeedData.Greedy(problem);
        for (int item = 0; item < _tight.Count; item++)
            _tight.X[item] *= 0.95;
        _tight.Length *= 0.95;
        SeverityTable.Fill(problem, _tight);
        _state = _tight.Copy();
        _placer = new PiecePlacer(problem, SearchTuning.Default, new RandomStream(1, 1));
    }

    [Benchmark(Description = "depth of one pair")]
    public float Depth() => _fit.Depth(_x, _y);

    [Benchmark(Description = "one placement search among 25")]
    public double Place()
    {
        _state.Take(_tight);
        _placer.Place(_state, [], [], 0);
        return _state.X[0];
    }
}
