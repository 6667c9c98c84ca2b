namespace Nestmark.Bench.Garments;

/// <summary>What one run of a garment gave. Written and read as one line of JSON between processes.</summary>
/// <remarks>Figures that the kind of run does not measure are 0.</remarks>
internal sealed record GarmentFigures
{
    /// <summary>Placements in the marker.</summary>
    public int Pieces { get; init; }

    /// <summary>From the search's start to its first verified marker, the first run of the process.</summary>
    public double ColdSeconds { get; init; }

    /// <summary>The same in the second run of the process.</summary>
    public double WarmSeconds { get; init; }

    /// <summary>Length of the first marker.</summary>
    public double FirstLengthMillimeters { get; init; }

    /// <summary>Length at the end.</summary>
    public double LengthMillimeters { get; init; }

    /// <summary>Efficiency at the end.</summary>
    public double EfficiencyRatio { get; init; }

    /// <summary>Wall-clock seconds of the whole search, or of the part of it whose rate is measured.</summary>
    public double Seconds { get; init; }

    /// <summary>Processor seconds in the same time, of all threads.</summary>
    public double ProcessorSeconds { get; init; }

    /// <summary>Pieces placed anew in the same time, by all threads.</summary>
    public long Moves { get; init; }

    /// <summary>Places judged in the same time, by all threads.</summary>
    public long JudgedPlaces { get; init; }

    /// <summary>Places judged from the first lay to the end of the search, in a second of it: no-fit polygons included.</summary>
    public double WholePlacesPerSecond { get; init; }

    /// <summary>Others that a piece can meet.</summary>
    public Reach Reach { get; init; }

    /// <summary>Greatest managed heap, looked at every 20 ms; garbage included.</summary>
    public double PeakHeapMegabytes { get; init; }

    /// <summary>Greatest working set of the process.</summary>
    public double PeakProcessMegabytes { get; init; }

    /// <summary>Processor seconds in a wall-clock second: how many cores the run really had.</summary>
    public double Cores => ProcessorSeconds / Math.Max(1e-3, Seconds);

    /// <summary>Places judged in a wall-clock second.</summary>
    public double PlacesPerSecond => JudgedPlaces / Math.Max(1e-3, Seconds);

    /// <summary>Places judged in a processor second.</summary>
    public double PlacesPerProcessorSecond => JudgedPlaces / Math.Max(1e-3, ProcessorSeconds);

    /// <summary>Places judged for a piece placed anew.</summary>
    public double PlacesPerMove => JudgedPlaces / (double)Math.Max(1, Moves);

    /// <summary>Processor microseconds of a move.</summary>
    public double MoveMicroseconds => 1e6 * ProcessorSeconds / Math.Max(1, Moves);

    /// <summary>Processor nanoseconds of a judged place.</summary>
    public double PlaceNanoseconds => 1e9 * ProcessorSeconds / Math.Max(1, JudgedPlaces);
}
