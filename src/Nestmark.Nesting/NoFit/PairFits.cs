using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Geometry.NoFit;

namespace Nestmark.Nesting.NoFit;

/// <summary>The no-fit polygons of all pairs among some shapes and how severely they overlap, each made when first asked for; one for both orders of a pair. Safe for several threads.</summary>
/// <remarks>Mirror images share their work: turning both shapes half round, or over, turns the no-fit polygon likewise.</remarks>
internal sealed class PairFits
{
    /// <summary>How far a corner of a fit may stand out of the plain no-fit polygon: clearance times 2√2, the longest of its corners.</summary>
    private const double Margin = PairFit.ClearanceMicrometers * 3;

    private readonly DistinctShapes _shapes;
    private readonly Box[] _bounds;
    private readonly int _count;
    private readonly PairFit?[] _fits;
    private readonly NoFitRegion?[] _regions;
    private readonly OverlapMap?[] _maps;
    private readonly CircleCover?[] _covers;
    private readonly Lazy<ImmutableArray<Circle>>[] _circles;

    public PairFits(IReadOnlyList<Polygon> shapes)
    {
        _shapes = new DistinctShapes(shapes);
        _bounds = [.. shapes.Select(shape => shape.Bounds)];
        _count = shapes.Count;
        _fits = new PairFit?[_count * _count];
        _regions = new NoFitRegion?[_shapes.Count * _shapes.Count * Mirroring.All.Length];
        _maps = new OverlapMap?[_count * _count];
        _covers = new CircleCover?[_count];
        _circles = [.. Enumerable.Range(0, _shapes.Count).Select(index => new Lazy<ImmutableArray<Circle>>(() => CircleCover.CirclesOf(_shapes.Base(index))))];
    }

    /// <summary>The fit of a still shape and a moving one; the still one's index is not above the moving one's.</summary>
    public PairFit Of(int still, int moving)
    {
        ref PairFit? slot = ref _fits[still * _count + moving];
        return Volatile.Read(ref slot) ?? Make(ref slot, still, moving);
    }

    /// <summary>How severely two shapes overlap; arguments as those of <see cref="Of"/>.</summary>
    public OverlapMap MapOf(int still, int moving)
    {
        ref OverlapMap? slot = ref _maps[still * _count + moving];
        return Volatile.Read(ref slot) ?? Interlocked.CompareExchange(ref slot, new OverlapMap(Of(still, moving), CoverOf(still), CoverOf(moving)), null) ?? slot;
    }

    /// <summary>Where the fit of two shapes lies, without making it.</summary>
    public FitRoom RoomOf(int still, int moving)
    {
        ref readonly Box first = ref _bounds[still];
        ref readonly Box second = ref _bounds[moving];
        return new FitRoom(
            first.MinX - second.MaxX - Margin, first.MaxX - second.MinX + Margin,
            first.MinY - second.MaxY - Margin, first.MaxY - second.MinY + Margin);
    }

    private PairFit Make(ref PairFit? slot, int still, int moving)
    {
        PairFit made = new(RegionOf(_shapes.Postures[still], _shapes.Postures[moving]));
        return Interlocked.CompareExchange(ref slot, made, null) ?? made;
    }

    private CircleCover CoverOf(int shape)
    {
        Posture posture = _shapes.Postures[shape];
        return _covers[shape] ??= CircleCover.Of(_shapes.Base(posture.Base), _circles[posture.Base].Value, posture.Mirroring);
    }

    private NoFitRegion RegionOf(Posture still, Posture moving)
    {
        Mirroring between = still.Mirroring.After(moving.Mirroring);
        ref NoFitRegion? slot = ref _regions[(still.Base * _shapes.Count + moving.Base) * Mirroring.All.Length + between.Index];
        NoFitRegion region = Volatile.Read(ref slot)
            ?? (slot = NoFitPolygon.WithoutFits(_shapes.Base(still.Base), between.Apply(_shapes.Base(moving.Base))));
        return still.Mirroring.Apply(region);
    }
}
