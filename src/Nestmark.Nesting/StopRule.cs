namespace Nestmark.Nesting;

/// <summary>When a search ends. Asked often, from several threads.</summary>
public abstract class StopRule
{
    /// <summary>The part of the allowance that is spent, 0 to 1; at 1 the search ends.</summary>
    /// <param name="steps">Steps that the asking thread has done.</param>
    public abstract double SpentRatio(long steps);

    /// <summary>The rule for one of several searches that share an allowance and run one after another.</summary>
    /// <param name="fromRatio">The part of the allowance that is meant to be spent before it, 0 to 1.</param>
    /// <param name="toRatio">The part that is meant to be spent after it, not below <paramref name="fromRatio"/>.</param>
    public abstract StopRule Part(double fromRatio, double toRatio);
}
