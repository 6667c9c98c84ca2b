using Nestmark.Output.Drawings;

namespace Nestmark.Output.Lays;

/// <summary>A filled arrow head.</summary>
internal static class ArrowHead
{
    /// <summary>Draws one whose point lies at <paramref name="to"/>, coming from another place.</summary>
    public static void Draw(Drawing drawing, Role role, Spot from, Spot to, double lengthMillimeters)
    {
        double length = from.DistanceMillimeters(to);
        double x = (to.XMillimeters - from.XMillimeters) / length * lengthMillimeters;
        double y = (to.YMillimeters - from.YMillimeters) / length * lengthMillimeters;
        drawing.Fill(role, 0, to, to.Moved(-x - y * 0.3, -y + x * 0.3), to.Moved(-x + y * 0.3, -y - x * 0.3));
    }
}
