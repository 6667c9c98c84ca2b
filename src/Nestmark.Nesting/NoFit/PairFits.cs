using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Nesting.NoFit;

/// <summary>The no-fit polygons of all pairs among some shapes, each made when first asked for; one for both orders of a pair. Safe for several threads.</summary>
internal sealed class PairFits(IReadOnlyList<Polygon> shapes)
{
    private readonly PairFit?[] _fits = new PairFit?[shapes.Count * shapes.Count];

    /// <summary>The fit of a still shape and a moving one; the still one's index is not above the moving one's.</summary>
    public PairFit Of(int still, int moving)
    {
        ref PairFit? slot = ref _fits[still * shapes.Count + moving];
        return Volatile.Read(ref slot) ?? Make(ref slot, still, moving);
    }

    private PairFit Make(ref PairFit? slot, int still, int moving)
    {
        PairFit made = new(NoFitPolygon.Of(shapes[still], shapes[moving]));
        return Interlocked.CompareExchange(ref slot, made, null) ?? made;
    }
}
