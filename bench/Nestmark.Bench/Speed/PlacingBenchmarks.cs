using BenchmarkDotNet.Attributes;
using Nestmark.Nesting.NoFit;
using Nestmark.Nesting.Search;

namespace Nestmark.Bench.Speed;

/// <summary>What the search does most: judging one pair, and placing one piece anew in a lay that is too short.</summary>
public class PlacingBenchmarks
{
    private OverlapMap _map = null!;
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
        PairSide side = problem.Sides[problem.Sides.IndexOf(shape, problem.Items[1].Ways[0].Shape)];
        (_map, PairFit fit) = (side.Map, side.Fit);
        (_x, _y) = ((fit.MinX * 3 + fit.MaxX) / 4, (fit.MinY + fit.MaxY) / 2);
        _tight = SpeedData.Greedy(problem);
        for (int item = 0; item < _tight.Count; item++)
            _tight.X[item] *= 0.95;
        _tight.Length *= 0.95;
        SeverityTable.Fill(problem, _tight);
        _state = _tight.Copy();
        _placer = new PiecePlacer(problem, SearchTuning.Default, new RandomStream(1, 1));
    }

    [Benchmark(Description = "severity of one pair")]
    public float Severity() => _map.At(_x, _y);

    [Benchmark(Description = "one placement search among 25")]
    public double Place()
    {
        _state.Take(_tight);
        _placer.Place(_state, [], [], 0);
        return _state.X[0];
    }
}
