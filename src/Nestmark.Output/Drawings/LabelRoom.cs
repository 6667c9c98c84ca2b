using System.Collections.Immutable;

namespace Nestmark.Output.Drawings;

/// <summary>Where a label may stand: inside the rings, inside the region, on none of the obstacles and in no area that is taken.</summary>
internal sealed class LabelRoom
{
    private const int Samples = 15;
    private const int Tries = 40;
    private static readonly double[] Scales = [1, 0.8, 0.64, 0.5, 0.4, 0.32, 0.25, 0.2];

    private readonly Area _region;
    private readonly (Spot Start, Spot End)[] _edges;
    private readonly (Spot Start, Spot End)[] _blocked;
    private readonly Area[] _taken;
    private readonly Spot[] _deepSpots;

    /// <summary>The room where no area is taken.</summary>
    /// <param name="rings">Outer ring and holes.</param>
    /// <param name="region">The part of the picture that counts.</param>
    /// <param name="obstacles">Lines that the label must not touch.</param>
    public LabelRoom(ImmutableArray<ImmutableArray<Spot>> rings, Area region, IEnumerable<(Spot Start, Spot End)> obstacles)
        : this(rings, region, obstacles, [])
    {
    }

    /// <summary>The room.</summary>
    /// <param name="rings">Outer ring and holes.</param>
    /// <param name="region">The part of the picture that counts.</param>
    /// <param name="obstacles">Lines that the label must not touch.</param>
    /// <param name="taken">Areas that it must keep off.</param>
    public LabelRoom(ImmutableArray<ImmutableArray<Spot>> rings, Area region, IEnumerable<(Spot Start, Spot End)> obstacles, IEnumerable<Area> taken)
    {
        _region = region.Common(Area.Around(rings[0]));
        _edges = [.. rings.SelectMany(EdgesOf)];
        _blocked = [.. _edges.Concat(obstacles).Where(edge => Area.Around([edge.Start, edge.End]).Touches(_region))];
        _taken = [.. taken.Where(area => area.Touches(_region))];
        _deepSpots = [.. DeepSpots().Take(Tries)];
    }

    /// <summary>The best place for a block: as large as may be, upright before turned, deep inside.</summary>
    /// <param name="block">What is to be placed.</param>
    /// <param name="smallestRatio">Smallest scale to try, at most 1.</param>
    /// <returns>The place, or <c>null</c> where even the smallest does not fit.</returns>
    public LabelPlace? PlaceFor(TextBlock block, double smallestRatio) => PlaceFor(block, smallestRatio, LabelTurn.Upright, LabelTurn.Quarter);

    /// <summary>The best place for a block that may lie in some ways only; the first way is tried first at each scale.</summary>
    public LabelPlace? PlaceFor(TextBlock block, double smallestRatio, params ReadOnlySpan<LabelTurn> turns)
    {
        foreach (double scale in Scales)
        {
            if (scale < smallestRatio)
                break;
            TextBlock scaled = block.Scaled(scale);
            foreach (LabelTurn turn in turns)
            {
                int found = Array.FindIndex(_deepSpots, FreeFor(scaled, turn));
                if (found >= 0)
                    return new LabelPlace(_deepSpots[found], scaled, turn);
            }
        }
        return null;
    }

    /// <summary>The deepest sampled spot; <c>null</c> when none lies inside.</summary>
    public Spot? Deepest() => _deepSpots.Length == 0 ? null : _deepSpots[0];

    private IEnumerable<Spot> DeepSpots() => GridSpots()
        .Where(IsInside)
        .Select(spot => (Spot: spot, Depth: Math.Round(DepthOf(spot), 1)))
        .OrderByDescending(sample => sample.Depth)
        .ThenBy(sample => Math.Round(sample.Spot.DistanceMillimeters(_region.Center), 3))
        .ThenBy(sample => sample.Spot.XMillimeters)
        .ThenBy(sample => sample.Spot.YMillimeters)
        .Select(sample => sample.Spot);

    private IEnumerable<Spot> GridSpots()
    {
        if (_region.WidthMillimeters <= 0 || _region.HeightMillimeters <= 0)
            yield break;
        for (int column = 0; column < Samples; column++)
            for (int row = 0; row < Samples; row++)
                yield return new Spot(
                    _region.LeftMillimeters + _region.WidthMillimeters * (column + 0.5) / Samples,
                    _region.BottomMillimeters + _region.HeightMillimeters * (row + 0.5) / Samples);
    }

    private bool IsInside(Spot spot) => ShapeTests.IsInside(_edges, spot);

    private double DepthOf(Spot spot)
    {
        double depth = Math.Min(
            Math.Min(spot.XMillimeters - _region.LeftMillimeters, _region.RightMillimeters - spot.XMillimeters),
            Math.Min(spot.YMillimeters - _region.BottomMillimeters, _region.TopMillimeters - spot.YMillimeters));
        foreach ((Spot start, Spot end) in _blocked)
            depth = Math.Min(depth, ShapeTests.DistanceMillimeters(start, end, spot));
        foreach (Area area in _taken)
            depth = Math.Min(depth, area.DistanceMillimeters(spot));
        return depth;
    }

    private Predicate<Spot> FreeFor(TextBlock block, LabelTurn turn) => spot => IsFree(new LabelPlace(spot, block, turn).Area);

    private bool IsFree(Area area)
    {
        if (!_region.Holds(area.Corners[0]) || !_region.Holds(area.Corners[2]) || Array.Exists(_taken, area.Touches))
            return false;
        foreach ((Spot start, Spot end) in _blocked)
        {
            if (ShapeTests.Meets(area, start, end))
                return false;
        }
        return true;
    }

    private static IEnumerable<(Spot Start, Spot End)> EdgesOf(ImmutableArray<Spot> ring) =>
        ring.Select((spot, i) => (spot, ring[(i + 1) % ring.Length]));
}
