using System.Runtime.Intrinsics;

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
        Severity = new float[PaddedSquare(count)];
    }

    private LayState(LayState other)
    {
        X = (double[])other.X.Clone();
        Y = (double[])other.Y.Clone();
        Way = (int[])other.Way.Clone();
        Severity = (float[])other.Severity.Clone();
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

    /// <summary>Severity of each pair, both halves filled: row times count plus column; zeros after the last row fill it up to a multiple of eight.</summary>
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
        other.Phases.CopyTo(Phases, 0);
        Length = other.Length;
    }

    /// <summary>The square of a count, rounded up to a multiple of eight.</summary>
    public static int PaddedSquare(int count) => (count * count + 7) & ~7;

    /// <summary>Sum of all pairs' severities.</summary>
    public double TotalSeverity()
    {
        Vector256<double> sum = Vector256<double>.Zero;
        ref float severities = ref Severity[0];
        for (nuint i = 0; i < (nuint)Severity.Length; i += 8)
        {
            (Vector256<double> first, Vector256<double> second) = Vector256.Widen(Vector256.LoadUnsafe(ref severities, i));
            sum += first + second;
        }
        return Vector256.Sum(sum) / 2;
    }

    /// <summary>The greatest severity of a pair.</summary>
    public float GreatestSeverity()
    {
        Vector256<float> greatest = Vector256<float>.Zero;
        ref float severities = ref Severity[0];
        for (nuint i = 0; i < (nuint)Severity.Length; i += 8)
            greatest = Vector256.Max(greatest, Vector256.LoadUnsafe(ref severities, i));
        float most = 0;
        for (int i = 0; i < 8; i++)
            most = Math.Max(most, greatest[i]);
        return most;
    }

    /// <summary>Whether an item overlaps any other.</summary>
    public bool Overlaps(int item) => Severity.AsSpan(item * Count, Count).ContainsAnyInRange(float.Epsilon, float.MaxValue);
}
