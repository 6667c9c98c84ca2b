namespace Nestmark.Bench.Garments;

/// <summary>What one process measures.</summary>
internal enum GarmentRunKind
{
    /// <summary>The time to the first verified marker, cold and warm.</summary>
    First,

    /// <summary>A whole search: its length and its memory.</summary>
    Search,

    /// <summary>How much the search does in a second after its first lay.</summary>
    Rate,
}
