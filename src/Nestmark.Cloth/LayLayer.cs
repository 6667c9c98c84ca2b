using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>A strip of the flat cloth as one layer of the lay: its place across the lay is sign × place + shift.</summary>
/// <param name="From">Near edge of the strip on the flat cloth, from the near edge of the usable width.</param>
/// <param name="To">Far edge.</param>
/// <param name="Sign">1 where the layer lies as it was, -1 where it is folded over.</param>
/// <param name="Shift">Where the place 0 of the flat cloth would come to lie.</param>
public readonly record struct LayLayer(Length From, Length To, int Sign, Length Shift)
{
    /// <summary>Where a place across the flat cloth comes to lie across the lay.</summary>
    public Length OnLay(Length place) => place * Sign + Shift;
}
