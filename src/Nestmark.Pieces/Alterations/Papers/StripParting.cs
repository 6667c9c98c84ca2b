using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Puts a strip into a piece at a line, or takes one out.</summary>
internal static class StripParting
{
    /// <summary>Least sine between the line and the way in which the piece is moved apart: 10 degrees.</summary>
    private static readonly double LeastSine = Angle.FromDegrees(10).SineRatio;

    /// <summary>Everything beyond the line moves along a way.</summary>
    public static PaperOutcome Open(Paper paper, AlterLine line, Vector way, Length by, SideTruing truing) =>
        At(paper, line, way, found => Parting.Of(paper, HalfParting.Open(found, way, by.Micrometers), truing));

    /// <summary>The strip beyond the line goes, and the rest moves up to the line.</summary>
    public static PaperOutcome Close(Paper paper, AlterLine line, Vector way, Length by, SideTruing truing) =>
        At(paper, line, way, found => Parting.Of(paper, HalfParting.Close(found, way, by.Micrometers), truing));

    private static PaperOutcome At(Paper paper, AlterLine line, Vector way, Func<StraightLine, PaperOutcome> make)
    {
        (StraightLine found, AlterationFault? fault) = LineFinding.Find(paper, line, way);
        if (fault is not null)
            return fault;
        return Math.Abs(found.Direction.Cross(way)) < LeastSine ? AlterationFaults.LineAlongWay() : make(found);
    }
}
