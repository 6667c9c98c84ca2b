using System.Globalization;

namespace Nestmark.Input.Quantities;

/// <summary>Reads numbers as sewists write them: 1.5, 5/8, 2 1/4, ½, 1 ½; never with a decimal comma or an exponent.</summary>
internal sealed class NumberScanner
{
    private const int LongestText = 60;
    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static readonly (int Numerator, int Denominator)[] VulgarValues =
        [(1, 2), (1, 3), (2, 3), (1, 4), (3, 4), (1, 5), (2, 5), (3, 5), (4, 5), (1, 6), (5, 6), (1, 8), (3, 8), (5, 8), (7, 8)];

    private readonly string _text;
    private int _at;

    private NumberScanner(string text) => _text = text;

    /// <summary>The number at the start of a text.</summary>
    public static Reading<ScannedNumber> Scan(string text)
    {
        string trimmed = text.Trim();
        if (trimmed.Length == 0)
            return new(null, QuantityFaults.Empty());
        if (trimmed.Length > LongestText)
            return new(null, QuantityFaults.TooLong());
        if (IsNotANumber(trimmed))
            return new(null, QuantityFaults.NotFinite(trimmed));
        return new NumberScanner(trimmed).Scan();
    }

    private static bool IsNotANumber(string text)
    {
        string word = text.TrimStart('+', '-', '.').ToLowerInvariant();
        return word is "nan" or "inf" or "infinity";
    }

    private Reading<ScannedNumber> Scan()
    {
        bool isNegative = Peek() == '-';
        if (Peek() is '-' or '+')
            _at++;
        Reading<decimal> number = Unsigned();
        if (number.Fault is not null)
            return new(null, number.Fault);
        string rest = _text[_at..].Trim();
        if (rest.Length > 0 && (char.IsAsciiDigit(rest[0]) || rest[0] is '.' or ','))
            return new(null, QuantityFaults.NotANumber(_text));
        return new(new ScannedNumber(isNegative ? -number.Value : number.Value, rest), null);
    }

    private Reading<decimal> Unsigned()
    {
        if (VulgarHere() is decimal fractionAlone)
            return new(fractionAlone, null);
        string digits = Digits();
        if (Peek() == ',' && digits.Length > 0)
            return new(0, QuantityFaults.DecimalComma(_text));
        if (Peek() == '.')
        {
            _at++;
            digits += "." + Digits();
        }
        if (digits.Trim('.').Length == 0)
            return new(0, QuantityFaults.NotANumber(_text));
        if (HasExponent())
            return new(0, QuantityFaults.Exponent(_text));
        if (!decimal.TryParse(digits, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value))
            return new(0, QuantityFaults.TooLarge(_text));
        return digits.Contains('.') ? new(value, null) : WithFraction(value);
    }

    private Reading<decimal> WithFraction(decimal whole)
    {
        if (Peek() == '/')
            return Divided(whole);
        int before = _at;
        SkipBlanks();
        if (VulgarHere() is decimal vulgar)
            return new(whole + vulgar, null);
        string digits = Digits();
        if (digits.Length > 0 && Peek() == '/' && decimal.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out decimal numerator))
        {
            Reading<decimal> fraction = Divided(numerator);
            return fraction.Fault is null ? new(whole + fraction.Value, null) : fraction;
        }
        _at = before;
        return new(whole, null);
    }

    private Reading<decimal> Divided(decimal numerator)
    {
        _at++;
        bool isGood = decimal.TryParse(Digits(), NumberStyles.None, CultureInfo.InvariantCulture, out decimal denominator) && denominator > 0;
        return isGood ? new(numerator / denominator, null) : new(0, QuantityFaults.BadFraction(_text));
    }

    private decimal? VulgarHere()
    {
        int index = _at < _text.Length ? Vulgar.IndexOf(_text[_at], StringComparison.Ordinal) : -1;
        if (index < 0)
            return null;
        _at++;
        return (decimal)VulgarValues[index].Numerator / VulgarValues[index].Denominator;
    }

    private bool HasExponent() =>
        Peek() is 'e' or 'E' && _at + 1 < _text.Length && (char.IsAsciiDigit(_text[_at + 1]) || _text[_at + 1] is '+' or '-');

    private string Digits()
    {
        int start = _at;
        while (char.IsAsciiDigit(Peek()))
            _at++;
        return _text[start.._at];
    }

    private void SkipBlanks()
    {
        while (char.IsWhiteSpace(Peek()))
            _at++;
    }

    private char Peek() => _at < _text.Length ? _text[_at] : '\0';
}
