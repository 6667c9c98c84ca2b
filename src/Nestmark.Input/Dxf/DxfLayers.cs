using System.Globalization;

namespace Nestmark.Input.Dxf;

/// <summary>The numbered layers of pattern files.</summary>
/// <remarks>Source: references/formats.md 1.3, from memory; to be checked against ASTM D6673. ANSI/AAMA-292 has the same, without 80 to 87.</remarks>
internal static class DxfLayers
{
    public const int Boundary = 1;
    public const int TurnPoints = 2;
    public const int CurvePoints = 3;
    public const int Notches = 4;
    public const int GradeReference = 5;
    public const int MirrorLine = 6;
    public const int Grainline = 7;
    public const int InternalLines = 8;
    public const int StripeReference = 9;
    public const int PlaidReference = 10;
    public const int CutOuts = 11;
    public const int Unassigned = 12;
    public const int DrillHoles = 13;
    public const int SewLines = 14;
    public const int Annotation = 15;

    /// <summary>The number of a layer, or <c>null</c> for a layer of another kind.</summary>
    public static int? NumberOf(string layer) => int.TryParse(layer.AsSpan().Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;

    /// <summary>The name of a notch of this layer: V and slit notches have none; or <c>null</c> for other layers.</summary>
    public static string? NotchName(int layer) => layer switch
    {
        Notches => "",
        80 => "T",
        81 => "castle",
        82 => "check",
        83 => "U",
        _ => null,
    };

    /// <summary>The label of a line that is drawn on the piece; or <c>null</c> for layers that hold other things.</summary>
    public static string? LineLabel(int layer) => layer switch
    {
        InternalLines or Unassigned => "",
        StripeReference => "stripe line",
        PlaidReference => "plaid line",
        CutOuts => "cutout",
        _ => null,
    };

    /// <summary>Why a layer is passed over; or <c>null</c> where it is not known.</summary>
    public static string? PassedOver(int layer) => layer switch
    {
        GradeReference => "on layer 5 (grade reference)",
        84 or 85 or 86 or 87 => string.Create(CultureInfo.InvariantCulture, $"on layer {layer} (copy for checking)"),
        _ => null,
    };
}
