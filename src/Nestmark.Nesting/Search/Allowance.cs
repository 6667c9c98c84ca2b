namespace Nestmark.Nesting.Search;

/// <summary>What a thread may still spend in its present stage.</summary>
internal sealed class Allowance(StopRule stop, CancellationToken cancellation)
{
    private double _until;

    /// <summary>Steps done by this thread.</summary>
    public long Steps { get; private set; }

    /// <summary>Part of the whole allowance that is spent.</summary>
    public double SpentRatio => cancellation.IsCancellationRequested ? 1 : stop.SpentRatio(Steps);

    /// <summary>Whether the stage is over.</summary>
    public bool IsSpent => SpentRatio >= _until;

    /// <summary>Starts a stage that ends at a part of the whole allowance, at the latest when all is spent, whatever rounding made of the part.</summary>
    public void RunUntil(double ratio) => _until = Math.Min(ratio, 1);

    /// <summary>Counts one step.</summary>
    public void Step() => Steps++;
}
