namespace Nestmark.Nesting.Search;

/// <summary>Where every item lies at one moment, overlaps allowed, with how severe each overlap is.</summary>
internal sealed class LayState
{
    public LayState(int count)
    {
        X = new double[count];
        Y = new double[count];
        Way = new int[count];
        Severity = new float[count * count];
    }

    private LayState(LayState other)
    {
        X = (double[])other.X.Clone();
        Y = (double[])other.Y.Clone();
        Way = (int[])other.Way.Clone();
        Severity = (float[])other.Severity.Clone();
        Length = other.Length;
    }

    /// <summary>Place of each item's origin along the lay, micrometers.</summary>
    public double[] X { get; }

    /// <summary>Place of each item's origin across the lay, micrometers.</summary>
    public double[] Y { get; }

    /// <summary>The way each item lies.</summary>
    public int[] Way { get; }

    /// <summary>Severity of each pair, both halves filled: row times count plus column.</summary>
    public float[] Severity { get; }

    /// <summary>Length of the lay in micrometers.</summary>
    public double Length { get; set; }

    public int Count => X.Length;

    public LayState Copy() => new(this);

    public void Take(LayState other)
    {
        other.X.CopyTo(X, 0);
        other.Y.CopyTo(Y, 0);
        other.Way.CopyTo(Way, 0);
        other.Severity.CopyTo(Severity, 0);
        Length = other.Length;
    }

    /// <summary>Sum of all pairs' severities.</summary>
    public double TotalSeverity()
    {
        double sum = 0;
        for (int i = 0; i < Count; i++)
        {
            for (int j = i + 1; j < Count; j++)
                sum += Severity[i * Count + j];
        }
        return sum;
    }

    /// <summary>Whether an item overlaps any other.</summary>
    public bool Overlaps(int item) => Severity.AsSpan(item * Count, Count).ContainsAnyInRange(float.Epsilon, float.MaxValue);
}
