using CsCheck;

namespace Nestmark.Tests.Pieces;

/// <summary>Runs a property over samples from fixed seeds, the same on every machine, and names the seed that fails.</summary>
internal static class FixedSeeds
{
    public static void Check<T>(Gen<T> samples, int count, Action<T> property)
    {
        for (uint seed = 0; seed < count; seed++)
        {
            T sample = samples.Generate(new PCG(1, seed), null, out _);
            try
            {
                property(sample);
            }
            catch (Exception failure)
            {
                throw new InvalidOperationException($"Seed {seed}: {failure.Message}", failure);
            }
        }
    }
}
