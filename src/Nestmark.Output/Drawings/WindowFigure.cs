namespace Nestmark.Output.Drawings;

/// <summary>A part of another picture, seen through a rectangular window and moved, never scaled.</summary>
/// <param name="Inner">The other picture.</param>
/// <param name="Seen">The part to show, on the other picture.</param>
/// <param name="Place">Where the lowest left corner of that part lies on this picture.</param>
internal sealed record WindowFigure(Drawing Inner, Area Seen, Spot Place) : Figure
{
    /// <inheritdoc/>
    public override Area Bounds => new(
        Place.XMillimeters, Place.YMillimeters, Place.XMillimeters + Seen.WidthMillimeters, Place.YMillimeters + Seen.HeightMillimeters);
}
