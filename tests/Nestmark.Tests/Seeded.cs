using CsCheck;

namespace Nestmark.Tests;

/// <summary>Properties on samples that are the same in every run and on every machine. CsCheck's own seed fixes only the first sample of a run.</summary>
internal static class Seeded
{
    /// <summary>Checks the samples from number 0 up to a count; a failure names the number, the way to make that sample again, and the sample.</summary>
    public static void Check<T>(this Gen<T> generator, int count, Action<T> property)
    {
        for (int number = 0; number < count; number++)
        {
            T sample = generator.Numbered(number);
            try
            {
                property(sample);
            }
            catch (Exception failure)
            {
                string text = CsCheck.Check.Print(sample);
                throw new InvalidOperationException($"Sample {number}, which generator.Numbered({number}) makes again: {failure.Message}\n{text}", failure);
            }
        }
    }

    /// <summary>As <see cref="Check{T}"/>, for pairs.</summary>
    public static void Check<T1, T2>(this Gen<(T1, T2)> generator, int count, Action<T1, T2> property) =>
        generator.Check(count, sample => property(sample.Item1, sample.Item2));

    /// <summary>As <see cref="Check{T}"/>, for three values.</summary>
    public static void Check<T1, T2, T3>(this Gen<(T1, T2, T3)> generator, int count, Action<T1, T2, T3> property) =>
        generator.Check(count, sample => property(sample.Item1, sample.Item2, sample.Item3));

    /// <summary>As <see cref="Check{T}"/>, for four values.</summary>
    public static void Check<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> generator, int count, Action<T1, T2, T3, T4> property) =>
        generator.Check(count, sample => property(sample.Item1, sample.Item2, sample.Item3, sample.Item4));

    /// <summary>One sample by its number: for looking at a failure by itself.</summary>
    public static T Numbered<T>(this Gen<T> generator, int number) => generator.Generate(new PCG(1, (ulong)number), null, out _);
}
