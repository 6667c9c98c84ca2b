namespace Nestmark.Nesting.Search;

/// <summary>Seeded random numbers, the same on every machine.</summary>
/// <remarks>Generator: D. Blackman, S. Vigna (2018), xoshiro256**; seeded through SplitMix64, as its authors advise.</remarks>
internal sealed class RandomStream
{
    private ulong _a;
    private ulong _b;
    private ulong _c;
    private ulong _d;

    public RandomStream(long seed, int stream)
    {
        ulong state = unchecked((ulong)seed * 0x9E3779B97F4A7C15UL + (ulong)stream * 0xD1B54A32D192ED03UL + 1);
        _a = Mixed(ref state);
        _b = Mixed(ref state);
        _c = Mixed(ref state);
        _d = Mixed(ref state);
    }

    /// <summary>A number from 0 up to below a count of 1 or more.</summary>
    public int Below(int count) => (int)((NextBits() >> 32) * (ulong)count >> 32);

    /// <summary>A number from 0 up to below 1.</summary>
    public double Ratio() => (NextBits() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Two numbers from 0 up to below 1, coarser than <see cref="Ratio"/> and as quick as one.</summary>
    public (float First, float Second) CoarseRatios()
    {
        const float Least = 1f / (1 << 24);
        ulong bits = NextBits();
        return ((bits >> 40) * Least, ((bits >> 16) & 0xFFFFFF) * Least);
    }

    /// <summary>A number between two bounds.</summary>
    public double Between(double low, double high) => low + (high - low) * Ratio();

    /// <summary>A bell-shaped number around zero with deviation close to 1: the sum of four even ones.</summary>
    public double Bell() => (Ratio() + Ratio() + Ratio() + Ratio() - 2) * 1.732;

    /// <summary>Puts a list into random order.</summary>
    public void Shuffle(Span<int> values)
    {
        for (int i = values.Length - 1; i > 0; i--)
        {
            int j = Below(i + 1);
            (values[i], values[j]) = (values[j], values[i]);
        }
    }

    private static ulong Mixed(ref ulong state)
    {
        state = unchecked(state + 0x9E3779B97F4A7C15UL);
        ulong mixed = state;
        mixed = unchecked((mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL);
        mixed = unchecked((mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL);
        return mixed ^ (mixed >> 31);
    }

    private ulong NextBits()
    {
        ulong result = unchecked(ulong.RotateLeft(_b * 5, 7) * 9);
        ulong shifted = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= shifted;
        _d = ulong.RotateLeft(_d, 45);
        return result;
    }
}
