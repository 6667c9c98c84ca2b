namespace Nestmark.Input.Quantities;

/// <summary>Which lengths make sense in a place.</summary>
internal enum LengthRange
{
    AboveZero,
    ZeroOrMore,
    Any,
}
