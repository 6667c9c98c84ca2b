using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Nesting.NoFit;

/// <summary>Sorts shapes by which of them are mirror images of others, point by point, so that what is true of one pair need not be worked out again for its images.</summary>
internal sealed class DistinctShapes
{
    private readonly List<Polygon> _bases = [];
    private readonly Dictionary<int, List<int>> _byHash = [];

    public DistinctShapes(IReadOnlyList<Polygon> shapes)
    {
        Postures = [.. shapes.Select(Find)];
    }

    /// <summary>What each shape is.</summary>
    public ImmutableArray<Posture> Postures { get; }

    public int Count => _bases.Count;

    public Polygon Base(int index) => _bases[index];

    private Posture Find(Polygon shape)
    {
        if (shape.Holes.IsEmpty)
        {
            foreach (Mirroring mirroring in Mirroring.All)
            {
                Polygon mirrored = mirroring.Apply(shape);
                int known = _byHash.GetValueOrDefault(HashOf(mirrored), []).FindIndex(index => IsSame(_bases[index], mirrored));
                if (known >= 0)
                    return new Posture(_byHash[HashOf(mirrored)][known], mirroring);
            }
        }
        int hash = HashOf(shape);
        if (!_byHash.TryGetValue(hash, out List<int>? alike))
            _byHash[hash] = alike = [];
        alike.Add(_bases.Count);
        _bases.Add(shape);
        return new Posture(_bases.Count - 1, Mirroring.All[0]);
    }

    /// <summary>The same for every vertex to begin with.</summary>
    private static int HashOf(Polygon shape) => HashCode.Combine(shape.Outer.Length, shape.Bounds, shape.TwiceArea);

    private static bool IsSame(Polygon left, Polygon right)
    {
        ImmutableArray<Point> ring = right.Outer;
        int start = ring.IndexOf(left.Outer[0]);
        if (start < 0 || ring.Length != left.Outer.Length || !left.Holes.IsEmpty)
            return false;
        ReadOnlySpan<Point> first = left.Outer.AsSpan();
        return first[..(ring.Length - start)].SequenceEqual(ring.AsSpan()[start..]) && first[(ring.Length - start)..].SequenceEqual(ring.AsSpan()[..start]);
    }
}
