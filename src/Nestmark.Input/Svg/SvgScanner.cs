using System.Globalization;

namespace Nestmark.Input.Svg;

/// <summary>Walks through the text of an attribute: numbers, separators, single characters.</summary>
internal sealed class SvgScanner(string text)
{
    /// <summary>Index of the next character.</summary>
    public int Position { get; private set; }

    public bool IsAtEnd => Position >= text.Length;

    public char Peek => IsAtEnd ? '\0' : text[Position];

    public void Advance() => Position++;

    public void SkipBlanks()
    {
        while (Peek is ' ' or '\t' or '\n' or '\r' or '\f')
            Position++;
    }

    /// <summary>Blanks with at most one comma among them.</summary>
    public void SkipSeparator()
    {
        SkipBlanks();
        if (Peek != ',')
            return;
        Position++;
        SkipBlanks();
    }

    public bool IsAtNumber => char.IsAsciiDigit(Peek) || Peek is '+' or '-' or '.';

    /// <summary>The number here, which may be infinite; <c>null</c> when there is none. The place stays where reading ended.</summary>
    public double? Number()
    {
        int start = Position;
        if (Peek is '+' or '-')
            Position++;
        int digits = Digits();
        if (Peek == '.')
        {
            Position++;
            digits += Digits();
        }
        if (digits == 0)
            return null;
        SkipExponent();
        return double.Parse(text.AsSpan(start, Position - start), NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    /// <summary>An arc flag: a single 0 or 1, which may abut what follows.</summary>
    public bool? Flag()
    {
        if (Peek is not ('0' or '1'))
            return null;
        return text[Position++] == '1';
    }

    public string Letters()
    {
        int start = Position;
        while (char.IsAsciiLetter(Peek) || Peek == '%')
            Position++;
        return text[start..Position];
    }

    private int Digits()
    {
        int start = Position;
        while (char.IsAsciiDigit(Peek))
            Position++;
        return Position - start;
    }

    private void SkipExponent()
    {
        if (Peek is not ('e' or 'E'))
            return;
        int before = Position++;
        if (Peek is '+' or '-')
            Position++;
        // "1em" is a number with a unit, not one with an exponent.
        if (Digits() == 0)
            Position = before;
    }
}
