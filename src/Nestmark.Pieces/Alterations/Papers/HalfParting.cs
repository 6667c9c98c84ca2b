using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A cut along a line right through: everything beyond it moves away along a way, or toward it over a strip that is taken out.</summary>
internal sealed class HalfParting : IParting
{
    private const double OnLineMicrometers = 5;
    private readonly StraightLine _line;
    private readonly double _perWay;
    private readonly double _strip;
    private readonly Vector _move;

    private HalfParting(StraightLine line, Vector way, double strip, Vector move)
    {
        _line = line;
        _perWay = line.SideOf(line.Place + way);
        _strip = strip;
        _move = move;
        Cuts = strip > 0 ? [line, new StraightLine(line.Place + strip * way, line.Direction)] : [line];
    }

    public ImmutableArray<StraightLine> Cuts { get; }

    /// <summary>Puts paper in; the way is not along the line.</summary>
    public static HalfParting Open(StraightLine line, Vector way, double micrometers) => new(line, way, 0, micrometers * way);

    /// <summary>Takes a strip out, beyond the line.</summary>
    public static HalfParting Close(StraightLine line, Vector way, double micrometers) => new(line, way, micrometers, -micrometers * way);

    public PaperSide SideOf(Vector place)
    {
        double beyond = Beyond(place);
        if (beyond <= OnLineMicrometers)
            return PaperSide.Still;
        return beyond >= _strip - (_strip > 0 ? OnLineMicrometers : 0) ? PaperSide.Moving : PaperSide.Gap;
    }

    public Vector Moved(Vector place) => place + _move;

    public bool IsTrued(PaperEdge edge) => true;

    public ImmutableArray<(PaperPoint Point, PaperSide Side)> Parted(PaperEdge edge)
    {
        List<(PaperPoint Point, PaperSide Side)> parted = [];
        for (int i = 0; i < edge.Points.Length; i++)
        {
            PaperPoint here = edge.Points[i];
            PaperSide side = SideOf(here.Place);
            if (i > 0 && parted[^1].Side != side)
                AddCuts(parted, edge.Points[i - 1], here, parted[^1].Side, side);
            parted.Add((here, side));
        }
        return [.. parted];
    }

    private void AddCuts(List<(PaperPoint, PaperSide)> parted, PaperPoint start, PaperPoint end, PaperSide from, PaperSide to)
    {
        bool entersOrLeavesStill = from == PaperSide.Still || to == PaperSide.Still;
        bool entersOrLeavesMoving = from == PaperSide.Moving || to == PaperSide.Moving;
        PaperPoint near = PaperPoint.AddedAt(Crossing(start.Place, end.Place, 0));
        PaperPoint far = PaperPoint.AddedAt(Crossing(start.Place, end.Place, _strip));
        List<(PaperPoint, PaperSide)> cuts = [];
        if (entersOrLeavesStill)
            cuts.Add((near, PaperSide.Still));
        if (entersOrLeavesMoving)
            cuts.Add((far, PaperSide.Moving));
        if (from > to)
            cuts.Reverse();
        parted.AddRange(cuts);
    }

    private Vector Crossing(Vector start, Vector end, double at)
    {
        double before = Beyond(start) - at;
        double after = Beyond(end) - at;
        double share = before == after ? 0 : Math.Clamp(before / (before - after), 0, 1);
        return start + share * (end - start);
    }

    private double Beyond(Vector place) => _line.SideOf(place) / _perWay;
}
