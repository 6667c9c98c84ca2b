namespace Nestmark.Input.Quantities;

/// <summary>The units of length that files may use.</summary>
internal enum LengthUnit
{
    Millimeter,
    Centimeter,
    Meter,
    Inch,
    Foot,
    Yard,
}
