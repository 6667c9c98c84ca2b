using System.Globalization;

namespace Nestmark.Input.Dxf;

/// <summary>A group code and its value.</summary>
/// <param name="Code">What the value is.</param>
/// <param name="Value">As written, without the line end.</param>
/// <param name="Line">Line of the value, from 1.</param>
internal readonly record struct DxfTag(int Code, string Value, int Line)
{
    /// <summary>The value as a number, or <c>null</c> when it is none or out of bounds.</summary>
    public double? Number =>
        double.TryParse(Value.AsSpan().Trim(), NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && Math.Abs(number) <= DxfLimits.LargestNumber
            ? number
            : null;
}
