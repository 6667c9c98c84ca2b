namespace Nestmark.Nesting;

/// <summary>Ends each thread after a number of steps: the same on every machine and every run.</summary>
/// <param name="stepsPerThread">0 or more; 0 keeps the greedy marker.</param>
public sealed class StepStop(long stepsPerThread) : StopRule
{
    /// <inheritdoc/>
    public override double SpentRatio(long steps) => stepsPerThread <= 0 ? 1 : Math.Min(1, steps / (double)stepsPerThread);

    /// <inheritdoc/>
    public override StopRule Part(double fromRatio, double toRatio) => new StepStop((long)Math.Round(stepsPerThread * (toRatio - fromRatio)));
}
