using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Nesting.NoFit;

/// <summary>The no-fit polygons of all pairs among some shapes and how severely they overlap, each made when first asked for. Safe for several threads.</summary>
/// <remarks>
/// Turning both shapes half round, or over, turns the no-fit polygon likewise, and so does changing the order of a pair.
/// So one serves all these pairs, each of which sees it mirrored in its own way.
/// </remarks>
internal sealed class PairFits
{
    private static readonly Mirroring HalfRound = Mirroring.All[1];

    private readonly DistinctShapes _shapes;
    private readonly PairFit?[] _fits;
    private readonly OverlapMap?[] _maps;
    private readonly Lazy<ImmutableArray<Circle>>[] _circles;

    public PairFits(IReadOnlyList<Polygon> shapes)
    {
        _shapes = new DistinctShapes(shapes);
        _fits = new PairFit?[_shapes.Count * _shapes.Count * Mirroring.All.Length];
        _maps = new OverlapMap?[_fits.Length];
        _circles = [.. Enumerable.Range(0, _shapes.Count).Select(index => new Lazy<ImmutableArray<Circle>>(() => CircleCover.CirclesOf(_shapes.Base(index))))];
    }

    /// <summary>The fit of a still shape and a moving one.</summary>
    public SeenFit Of(int still, int moving)
    {
        DistinctPair pair = PairOf(still, moving);
        return new SeenFit(FitOf(pair), pair.Seen);
    }

    /// <summary>How severely they overlap, and how a place of the moving one, seen from the still one, is to be mirrored before the map is asked.</summary>
    public (OverlapMap Map, Mirroring Seen) MapOf(int still, int moving)
    {
        DistinctPair pair = PairOf(still, moving);
        ref OverlapMap? slot = ref _maps[IndexOf(pair)];
        return (Volatile.Read(ref slot) ?? Interlocked.CompareExchange(ref slot, MakeMap(pair), null) ?? slot, pair.Seen);
    }

    /// <summary>Circles that nearly fill a shape.</summary>
    public CircleCover CoverOf(int shape) => CoverOf(_shapes.Postures[shape].Base, _shapes.Postures[shape].Mirroring);

    private DistinctPair PairOf(int still, int moving)
    {
        Posture first = _shapes.Postures[still];
        Posture second = _shapes.Postures[moving];
        Mirroring between = first.Mirroring.After(second.Mirroring);
        return first.Base <= second.Base
            ? new DistinctPair(first.Base, second.Base, between, first.Mirroring)
            : new DistinctPair(second.Base, first.Base, between, second.Mirroring.After(HalfRound));
    }

    private int IndexOf(DistinctPair pair) => (pair.Still * _shapes.Count + pair.Moving) * Mirroring.All.Length + pair.Between.Index;

    private PairFit FitOf(DistinctPair pair)
    {
        ref PairFit? slot = ref _fits[IndexOf(pair)];
        return Volatile.Read(ref slot) ?? Interlocked.CompareExchange(ref slot, MakeFit(pair), null) ?? slot;
    }

    private PairFit MakeFit(DistinctPair pair) =>
        new(NoFitPolygon.WithoutFits(_shapes.Base(pair.Still), pair.Between.Apply(_shapes.Base(pair.Moving))));

    private OverlapMap MakeMap(DistinctPair pair) =>
        new(FitOf(pair), CoverOf(pair.Still, Mirroring.All[0]), CoverOf(pair.Moving, pair.Between));

    private CircleCover CoverOf(int shape, Mirroring mirroring) => CircleCover.Of(_shapes.Base(shape), _circles[shape].Value, mirroring);

    /// <summary>Two distinct shapes, the moving one mirrored, and how the fit of these two is seen by the pair that was asked for.</summary>
    private readonly record struct DistinctPair(int Still, int Moving, Mirroring Between, Mirroring Seen);
}
