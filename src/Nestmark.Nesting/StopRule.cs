namespace Nestmark.Nesting;

/// <summary>When a search ends. Asked often, from several threads.</summary>
public abstract class StopRule
{
    /// <summary>The part of the allowance that is spent, 0 to 1; at 1 the search ends.</summary>
    /// <param name="steps">Steps that the asking thread has done.</param>
    public abstract double SpentRatio(long steps);
}
