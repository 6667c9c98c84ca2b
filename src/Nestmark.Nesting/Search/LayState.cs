namespace Nestmark.Nesting.Search;

/// <summary>Where every item lies at one moment, overlaps allowed, with how severe each overlap is.</summary>
internal sealed class LayState
{
    public LayState(int count, int phases = 0)
    {
        Phases = new double[phases];
        X = new double[count];
        Y = new double[count];
        Way = new int[count];
        Severities = new PairTable(count, 0);
    }

    private LayState(LayState other)
    {
        X = (double[])other.X.Clone();
        Y = (double[])other.Y.Clone();
        Way = (int[])other.Way.Clone();
        Severities = other.Severities.Copy();
        Phases = (double[])other.Phases.Clone();
        Length = other.Length;
    }

    /// <summary>Place of each item's origin along the lay, micrometers.</summary>
    public double[] X { get; }

    /// <summary>Place of each item's origin across the lay, micrometers.</summary>
    public double[] Y { get; }

    /// <summary>The way each item lies.</summary>
    public int[] Way { get; }

    /// <summary>Where the print lies under tied items, as <see cref="PrintGrid"/> reads it; empty when nothing is tied.</summary>
    public double[] Phases { get; }

    /// <summary>Severity of each pair; those that do not overlap rest at 0.</summary>
    public PairTable Severities { get; }

    /// <summary>Length of the lay in micrometers.</summary>
    public double Length { get; set; }

    public int Count => X.Length;

    public LayState Copy() => new(this);

    public void Take(LayState other)
    {
        other.X.CopyTo(X, 0);
        other.Y.CopyTo(Y, 0);
        other.Way.CopyTo(Way, 0);
        Severities.Take(other.Severities);
        other.Phases.CopyTo(Phases, 0);
        Length = other.Length;
    }
}
