using System.Buffers;
using System.Globalization;
using System.Text;

namespace Nestmark.Input.Dxf;

/// <summary>Splits a file into tags: a code on one line, its value on the next.</summary>
internal sealed class DxfTagReader(ReadOnlyMemory<byte> bytes, Encoding encoding)
{
    private static readonly SearchValues<byte> Blanks = SearchValues.Create(" \t\r\n\0\u001a"u8);
    private int _at;
    private int _line;

    /// <summary>What ended the reading before the end of the file.</summary>
    public Fault? Fault { get; private set; }

    /// <summary>The last line read.</summary>
    public int Line => _line;

    /// <summary>The next tag; <c>null</c> at the end or at a fault. Comments are passed over.</summary>
    public DxfTag? Next()
    {
        while (Fault is null && NextLine() is ReadOnlyMemory<byte> code)
        {
            string text = Encoding.Latin1.GetString(code.Span).Trim();
            if (text.Length == 0 && IsBlankToTheEnd())
                return null;
            if (!int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int number))
                Fault = DxfFaults.NoCode(text);
            else if (NextLine() is not ReadOnlyMemory<byte> value)
                Fault ??= DxfFaults.CutOff();
            else if (number != 999)
                return new DxfTag(number, encoding.GetString(value.Span), _line);
        }
        return null;
    }

    private bool IsBlankToTheEnd()
    {
        ReadOnlySpan<byte> rest = bytes.Span[_at..];
        return rest.IndexOfAnyExcept(Blanks) < 0;
    }

    private ReadOnlyMemory<byte>? NextLine()
    {
        ReadOnlySpan<byte> span = bytes.Span;
        if (_at >= span.Length)
            return null;
        int length = span[_at..].IndexOfAny((byte)'\n', (byte)'\r');
        int end = length < 0 ? span.Length : _at + length;
        ReadOnlyMemory<byte> line = bytes[_at..end];
        bool isPair = end + 1 < span.Length && span[end] == '\r' && span[end + 1] == '\n';
        _at = Math.Min(span.Length, end + (isPair ? 2 : 1));
        _line++;
        if (line.Length <= DxfLimits.LongestLineBytes)
            return line;
        Fault = DxfFaults.LongLine(DxfLimits.LongestLineBytes >> 10);
        return null;
    }
}
