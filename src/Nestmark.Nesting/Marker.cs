using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>All placements on one lay; verified exactly before it leaves this project.</summary>
/// <param name="Surface">The lay.</param>
/// <param name="LayLength">From x = 0 to the farthest cutting line; zero when nothing is placed.</param>
/// <param name="Placements">In the order of the job: piece, size, copy.</param>
/// <param name="Unplaced">Pieces that cannot lie here.</param>
public sealed record Marker(LaySurface Surface, Length LayLength, ImmutableArray<Placement> Placements, ImmutableArray<Unplaced> Unplaced)
{
    /// <summary>x of a crosswise bar of the print, from zero up to below its repeat; <c>null</c> without one. The lay begins so far before a bar.</summary>
    public Length? FirstBar { get; init; }

    /// <summary>Length of cloth that the lay takes, without ends: twice its own where cut ends lie together.</summary>
    public Length ClothLength => LayLength * Surface.LengthsOfCloth;

    /// <summary>Sum of layers × cutting area, divided by usable width × length of cloth: 0 to 1.</summary>
    public double EfficiencyRatio
    {
        get
        {
            double available = Surface.UsableWidth.TotalMillimeters * ClothLength.TotalMillimeters;
            double used = Placements.Sum(placement => placement.Layers * placement.Piece.CuttingLine.AreaSquareMillimeters);
            return available > 0 ? used / available : 0;
        }
    }
}
