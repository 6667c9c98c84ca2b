using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Tells the two parts at a line apart.</summary>
internal static class CutSides
{
    private const double OnLineMicrometers = 5;

    /// <summary>The side of a corner; or the fault that it is not there or stands on the line.</summary>
    public static (PaperSide Side, AlterationFault? Fault) SideOf(Paper paper, StraightLine line, string corner)
    {
        if (paper.Corner(corner) is not { } place)
            return (default, AlterationFaults.NoSuchCorner(corner, paper.Letters));
        double side = line.SideOf(place);
        return Math.Abs(side) <= OnLineMicrometers
            ? (default, AlterationFaults.CornerOnLine(corner))
            : (side > 0 ? PaperSide.Moving : PaperSide.Still, null);
    }

    public static Int128 Area(Paper paper) => Polygon.TwiceSignedArea([.. paper.Places.Select(place => place.Rounded())]);
}
