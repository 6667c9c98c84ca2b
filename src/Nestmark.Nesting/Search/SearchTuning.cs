using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>The numbers of the search; one set for every task. Where they come from: bench/RESULTS.md.</summary>
internal sealed record SearchTuning
{
    public static SearchTuning Default { get; } = new();

    /// <summary>Samples anywhere on the lay.</summary>
    public int WideSamples { get; init; } = 12;

    /// <summary>Places anywhere of which the least crowded one is such a sample.</summary>
    public int PlacesPerSample { get; init; } = 16;

    /// <summary>Samples around the item.</summary>
    public int NearSamples { get; init; } = 6;

    /// <summary>Spread of the wider half of the near samples, in sizes of the item.</summary>
    public double NearSpread { get; init; } = 0.1;

    /// <summary>Samples refined.</summary>
    public int Refined { get; init; } = 3;

    /// <summary>Ways of an item tried in one placing.</summary>
    public int WaysAtOnce { get; init; } = 4;

    /// <summary>Most exact searches along lines from each sample before the best go on.</summary>
    public int FirstLines { get; init; } = 2;

    /// <summary>Most promising samples, which go on.</summary>
    public int Finalists { get; init; } = 1;

    /// <summary>Most exact searches along lines from each of the most promising samples.</summary>
    public int LineSearches { get; init; } = 8;

    /// <summary>Reach of an exact search to both sides, in sizes of the item.</summary>
    public double LineReach { get; init; } = 0.5;

    /// <summary>Growth of a pair's weight while it overlaps: least.</summary>
    public double WeightGrowthLow { get; init; } = 1.2;

    /// <summary>Growth of a pair's weight while it overlaps: for the most severe overlap.</summary>
    public double WeightGrowthHigh { get; init; } = 2.0;

    /// <summary>Decay of a pair's weight while it does not overlap.</summary>
    public double WeightDecay { get; init; } = 0.95;

    /// <summary>Part of the allowance after which no further greedy order is tried.</summary>
    public double GreedyPart { get; init; } = 0.05;

    /// <summary>Part of the allowance after which shortening starts from the best lay only.</summary>
    public double ExplorePart { get; init; } = 0.8;

    /// <summary>How often the threads share the best lay while exploring.</summary>
    public int ExploreStages { get; init; } = 10;

    /// <summary>How much shorter another thread's lay must be to be taken over.</summary>
    public double AdoptFrom { get; init; } = 0.003;

    /// <summary>How long a run may gain nothing, in times of what it took to come so far, before another begins.</summary>
    public double RunPatience { get; init; } = 1;

    /// <summary>Least steps that a run is held to have taken, for each item.</summary>
    public long LeastRun { get; init; } = 2000;

    /// <summary>Part of the allowance kept for the last shortening with outlines as they are, when they were simplified.</summary>
    public double ExactPart { get; init; } = 0.05;

    /// <summary>Samples around the item in that part, in which there are none anywhere: so few no-fit polygons of true outlines are asked for.</summary>
    public int ExactNearSamples { get; init; } = 12;

    /// <summary>First shortening of the lay while exploring, and the greatest.</summary>
    public double FirstShortening { get; init; } = 0.005;

    /// <summary>Least shortening while exploring.</summary>
    public double LastShortening { get; init; } = 0.0005;

    /// <summary>Factor on the shortening after a lay could not be freed.</summary>
    public double ShorteningDecay { get; init; } = 0.7;

    /// <summary>Attempts without gain that end a removal while exploring.</summary>
    public int ExploreAttempts { get; init; } = 2;

    /// <summary>Rounds without gain that end an attempt while exploring.</summary>
    public int ExplorePatience { get; init; } = 100;

    /// <summary>First shortening while compressing.</summary>
    public double CompressFirst { get; init; } = 0.001;

    /// <summary>Last shortening while compressing.</summary>
    public double CompressLast { get; init; } = 0.00002;

    /// <summary>Attempts without gain that end a removal while compressing.</summary>
    public int CompressAttempts { get; init; } = 3;

    /// <summary>Rounds without gain that end an attempt while compressing.</summary>
    public int CompressPatience { get; init; } = 50;

    /// <summary>Lays kept that could not be freed.</summary>
    public int PoolSize { get; init; } = 20;

    /// <summary>How far down among them one is picked: deviation of the bell-shaped chance, as a part of all.</summary>
    public double PoolSpread { get; init; } = 0.25;

    /// <summary>How far outlines may be simplified, outward, for all but the last part of the search.</summary>
    public Length Tolerance { get; init; } = Length.FromMillimeters(0.3);

    /// <summary>The numbers for outlines as they are, when most of the search was done with simpler ones.</summary>
    public SearchTuning ForExactOutlines() => this with { WideSamples = 0, NearSamples = ExactNearSamples };
}
