using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A stretch of the lay with the same number of layers everywhere; a placement lies within one.</summary>
/// <param name="Low">Its lower edge along y.</param>
/// <param name="High">Its upper edge along y, above <paramref name="Low"/>.</param>
/// <param name="Layers">Layers of cloth: 1 or 2.</param>
/// <param name="From">Where it begins along x.</param>
/// <param name="To">Where it ends along x; <c>null</c> when it runs as far as the lay.</param>
public sealed record LayBand(Length Low, Length High, int Layers, Length From, Length? To)
{
    /// <summary>A band as long as the lay.</summary>
    public static LayBand Along(Length low, Length high, int layers) => new(low, high, layers, Length.Zero, null);

    /// <summary>Extent along y.</summary>
    public Length Depth => High - Low;

    /// <summary>Whether a box in micrometers lies within, edges included; without an end of its own the band ends with the lay.</summary>
    public bool Holds(Box box, Length layLength) =>
        new Box(From.Micrometers, Low.Micrometers, (To ?? layLength).Micrometers, High.Micrometers).Contains(box);
}
