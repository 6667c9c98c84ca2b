using System.Text;

namespace Nestmark.Bench.Fuzz;

/// <summary>Changes files at random: bytes, numbers, words, pieces cut out, doubled or taken from another file. The same seed changes the same way.</summary>
internal sealed class Mutator(ulong seed)
{
    private static readonly string[] Words =
    [
        "0", "-1", "1e308", "1e-308", "99999999999999999999", "-2147483648", "4294967296", "0.0000001", "NaN", "Infinity", "1/0", "%", "#", "<<", ">>", "[", "]", "(", ")",
        "{", "}", ":", "- ", "\n", "\t", "\0", "/", "&amp;", "<g>", "</g>", "<use href=\"#front\"/>", "M", "z", "a1 1 0 0 1", "transform=\"scale(0)\"", "viewBox=\"0 0 1 1\"",
        "obj", "endobj", "stream", "endstream", "R", "Do", "q ", "Q ", "cm ", "re S ", "BT ", "ET ", "/Fm Do ", "/OC ", "BDC ", "EMC ", "SECTION", "ENDSEC", "POLYLINE", "\n  0\n", "mm", "cm", "in", "1 on fold",
    ];

    private ulong _state = seed;

    /// <summary>A changed copy; never longer than four times the original and 64 KiB.</summary>
    public byte[] Change(byte[] bytes, IReadOnlyList<FuzzSeed> others)
    {
        List<byte> changed = [.. bytes];
        int most = 4 * bytes.Length + (64 << 10);
        int steps = 1 + Below(Below(8) == 0 ? 40 : 6);
        for (int i = 0; i < steps; i++)
        {
            Step(changed, others);
            if (changed.Count > most)
                changed.RemoveRange(most, changed.Count - most);
        }
        return [.. changed];
    }

    /// <summary>A number from 0 to one below the bound. SplitMix64: Steele, Lea and Flood (2014), Fast splittable pseudorandom number generators.</summary>
    public int Below(int bound)
    {
        _state += 0x9E3779B97F4A7C15;
        ulong mixed = (_state ^ (_state >> 30)) * 0xBF58476D1CE4E5B9;
        mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
        return (int)((mixed ^ (mixed >> 31)) % (ulong)Math.Max(1, bound));
    }

    private void Step(List<byte> bytes, IReadOnlyList<FuzzSeed> others)
    {
        int at = Below(bytes.Count + 1);
        int length = Math.Min(1 + Below(Below(3) == 0 ? 400 : 16), bytes.Count - at);
        switch (Below(9))
        {
            case 0 when at < bytes.Count:
                bytes[at] ^= (byte)(1 << Below(8));
                break;
            case 1 when at < bytes.Count:
                bytes[at] = (byte)Below(256);
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(Below(bytes.Count + 1), bytes.GetRange(at, length));
                break;
            case 4:
                bytes.InsertRange(at, Encoding.ASCII.GetBytes(Words[Below(Words.Length)]));
                break;
            case 5:
                ReplaceNumber(bytes, at);
                break;
            case 6:
                bytes.InsertRange(at, Enumerable.Repeat(bytes.GetRange(at, length), 1 + Below(60)).SelectMany(part => part));
                break;
            case 7 when others[Below(others.Count)] is FuzzSeed other && other.Files[other.Target] is { Length: > 0 } source:
                int from = Below(source.Length);
                bytes.InsertRange(at, source[from..Math.Min(source.Length, from + 1 + Below(300))]);
                break;
            case 8 when Below(20) == 0:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
        }
    }

    private void ReplaceNumber(List<byte> bytes, int at)
    {
        while (at < bytes.Count && bytes[at] is not (>= (byte)'0' and <= (byte)'9'))
            at++;
        int end = at;
        while (end < bytes.Count && bytes[end] is (>= (byte)'0' and <= (byte)'9') or (byte)'.')
            end++;
        bytes.RemoveRange(at, end - at);
        bytes.InsertRange(at, Encoding.ASCII.GetBytes(Below(3) == 0 ? Words[Below(11)] : Below(100_000).ToString(System.Globalization.CultureInfo.InvariantCulture)));
    }
}
