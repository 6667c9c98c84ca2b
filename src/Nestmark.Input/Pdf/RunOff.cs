using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Pdf;

/// <summary>A line that runs off a side of a page.</summary>
/// <param name="Side">The side.</param>
/// <param name="AlongMillimeters">Where on that side: the height on an upright side, the place across on a level one.</param>
/// <param name="Outward">Its direction there, length 1, away from the page.</param>
/// <param name="IsRuled">Whether the whole line runs from side to side, as the rulings that pages are printed with.</param>
internal readonly record struct RunOff(TileSide Side, double AlongMillimeters, CurvePoint Outward, bool IsRuled);
