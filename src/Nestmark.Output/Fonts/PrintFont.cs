using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Nestmark.Output.Fonts;

/// <summary>The print font: its files, how wide its letters are, and which letters it has.</summary>
/// <remarks>Reads the tables head, hhea, hmtx and cmap (format 4) of a TrueType file, as OpenType 1.9 describes them.</remarks>
internal sealed class PrintFont
{
    /// <summary>Family name, as in SVG.</summary>
    public const string Family = "Inter";

    /// <summary>Stands for every letter that the font lacks.</summary>
    public const char Missing = '□';

    /// <summary>Height of capital letters, in parts of the font size.</summary>
    public const double CapitalHeightRatio = 0.727;

    private readonly Dictionary<int, double> _widths = [];

    private PrintFont(byte[] file)
    {
        File = file;
        ReadWidths(Table("cmap"), Table("hmtx"));
    }

    /// <summary>The regular cut.</summary>
    public static PrintFont Regular { get; } = new(Resource("Inter-Regular.ttf"));

    /// <summary>The bold cut.</summary>
    public static PrintFont Bold { get; } = new(Resource("Inter-Bold.ttf"));

    /// <summary>The font file.</summary>
    public byte[] File { get; }

    /// <summary>The cut of a weight.</summary>
    public static PrintFont Of(FontWeight weight) => weight == FontWeight.Bold ? Bold : Regular;

    /// <summary>Whether the font has every letter of a text.</summary>
    public bool Covers(string text)
    {
        foreach (Rune rune in text.EnumerateRunes())
        {
            if (!_widths.ContainsKey(rune.Value))
                return false;
        }
        return true;
    }

    /// <summary>The text as it can be printed: on one line, letters that the font lacks replaced by <see cref="Missing"/>.</summary>
    public string Printable(string text)
    {
        string clean = CleanText.OneLine(text);
        if (Covers(clean))
            return clean;
        StringBuilder builder = new();
        foreach (Rune rune in clean.EnumerateRunes())
            builder.Append(_widths.ContainsKey(rune.Value) ? rune.ToString() : Missing.ToString(CultureInfo.InvariantCulture));
        return builder.ToString();
    }

    /// <summary>Width of a printable text at font size 1.</summary>
    public double WidthRatio(string text)
    {
        double sum = 0;
        foreach (Rune rune in text.EnumerateRunes())
            sum += _widths.TryGetValue(rune.Value, out double width) ? width : _widths[Missing];
        return sum;
    }

    private static byte[] Resource(string name)
    {
        using Stream stream = typeof(PrintFont).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException("The build left out the font " + name + ".");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private void ReadWidths(ReadOnlySpan<byte> characters, ReadOnlySpan<byte> metrics)
    {
        double unitsPerEm = Number(Table("head"), 18);
        int measured = Number(Table("hhea"), 34);
        ReadOnlySpan<byte> map = BasicMap(characters);
        int segments = Number(map, 6) / 2;
        for (int segment = 0; segment < segments; segment++)
        {
            int last = Number(map, 14 + 2 * segment);
            int first = Number(map, 16 + 2 * (segments + segment));
            for (int letter = first; letter <= last && letter < 0xFFFF; letter++)
            {
                int glyph = GlyphOf(map, segments, segment, letter);
                if (glyph != 0)
                    _widths[letter] = Number(metrics, 4 * Math.Min(glyph, measured - 1)) / unitsPerEm;
            }
        }
    }

    private static int GlyphOf(ReadOnlySpan<byte> map, int segments, int segment, int letter)
    {
        int first = Number(map, 16 + 2 * (segments + segment));
        int delta = Number(map, 16 + 2 * (2 * segments + segment));
        int offsetAt = 16 + 2 * (3 * segments + segment);
        int offset = Number(map, offsetAt);
        if (offset == 0)
            return (letter + delta) & 0xFFFF;
        int glyph = Number(map, offsetAt + offset + 2 * (letter - first));
        return glyph == 0 ? 0 : (glyph + delta) & 0xFFFF;
    }

    private static ReadOnlySpan<byte> BasicMap(ReadOnlySpan<byte> characters)
    {
        for (int i = 0; i < Number(characters, 2); i++)
        {
            ReadOnlySpan<byte> map = characters[(int)BinaryPrimitives.ReadUInt32BigEndian(characters[(8 + 8 * i)..])..];
            if (Number(map, 0) == 4)
                return map;
        }
        throw new InvalidOperationException("The print font has no character map of format 4.");
    }

    private ReadOnlySpan<byte> Table(string name)
    {
        for (int i = 0; i < Number(File, 4); i++)
        {
            ReadOnlySpan<byte> entry = File.AsSpan(12 + 16 * i, 16);
            if (Encoding.ASCII.GetString(entry[..4]) == name)
                return File.AsSpan((int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]), (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..]));
        }
        throw new InvalidOperationException("The print font has no table " + name + ".");
    }

    private static int Number(ReadOnlySpan<byte> table, int at) => BinaryPrimitives.ReadUInt16BigEndian(table[at..]);
}
