using CsCheck;

namespace Nestmark.Tests;

/// <summary>Checks a property on samples that are the same in every run. CsCheck's own seed fixes only the first sample of a run.</summary>
internal static class Seeded
{
    /// <summary>Checks the samples number 0 up to a count; a failure names the number and the sample.</summary>
    public static void Check<T>(this Gen<T> generator, int samples, Action<T> check)
    {
        for (int number = 0; number < samples; number++)
        {
            T sample = generator.Generate(new PCG(1, (ulong)number), null, out _);
            try
            {
                check(sample);
            }
            catch (Exception trouble)
            {
                throw new InvalidOperationException($"Sample {number}: {sample}", trouble);
            }
        }
    }
}
