using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Finds the line at which a piece is altered.</summary>
internal static class LineFinding
{
    /// <summary>The line; or the fault that there is none, or that it does not cross the piece.</summary>
    /// <param name="paper">The piece.</param>
    /// <param name="line">Named, level or between places.</param>
    /// <param name="way">Length one: the way in which distances of a level line are taken; the line is square to it.</param>
    public static (StraightLine Line, AlterationFault? Fault) Find(Paper paper, AlterLine line, Vector way)
    {
        (StraightLine found, AlterationFault? fault) = line switch
        {
            DrawnLine drawn => Drawn(paper, drawn),
            LevelLine level => Level(paper, level, way),
            LineBetween between => Between(paper, between),
            _ => throw new ArgumentException("Unknown kind of line.", nameof(line)),
        };
        if (fault is not null)
            return (default, fault);
        double[] sides = [.. paper.Places.Select(found.SideOf)];
        bool touches = sides.Max() >= -1 && sides.Min() <= 1;
        return touches ? (found, null) : (default, AlterationFaults.LineMisses());
    }

    private static (StraightLine, AlterationFault?) Drawn(Paper paper, DrawnLine drawn)
    {
        PaperLine? line = paper.Lines.FirstOrDefault(candidate => candidate.Label == drawn.Label);
        if (line is null)
        {
            string labels = string.Join(", ", paper.Lines.Select(candidate => candidate.Label).Where(label => label.Length > 0));
            return (default, AlterationFaults.NoSuchLine(drawn.Label, labels));
        }
        return Through(line.Places[0], line.Places[^1]);
    }

    private static (StraightLine, AlterationFault?) Between(Paper paper, LineBetween between)
    {
        (Vector from, AlterationFault? fault) = PlaceFinding.Find(paper, between.From);
        (Vector to, AlterationFault? otherFault) = PlaceFinding.Find(paper, between.To);
        return fault is null && otherFault is null ? Through(from, to) : (default, fault ?? otherFault);
    }

    private static (StraightLine, AlterationFault?) Through(Vector from, Vector to) => (to - from).Norm < 1
        ? (default, AlterationFaults.LineWithoutLength())
        : (new StraightLine(from, (to - from).Unit), null);

    private static (StraightLine, AlterationFault?) Level(Paper paper, LevelLine level, Vector way)
    {
        double least = paper.Places.Min(place => place.Dot(way));
        double most = paper.Places.Max(place => place.Dot(way));
        double? start = level.From switch
        {
            "head" => most,
            "tail" => least,
            "fold" => paper.Fold?.Start.Dot(way),
            _ => paper.Corner(level.From)?.Dot(way),
        };
        if (start is not double from)
            return (default, level.From == "fold" ? AlterationFaults.NotOnFold() : AlterationFaults.NoSuchCorner(level.From, paper.Letters));
        double toward = most - from >= from - least ? 1 : -1;
        if (level.Toward.Length > 0)
        {
            if (paper.Corner(level.Toward) is not { } aim)
                return (default, AlterationFaults.NoSuchCorner(level.Toward, paper.Letters));
            toward = aim.Dot(way) >= from ? 1 : -1;
        }
        double at = from + toward * level.Distance.Micrometers;
        return (new StraightLine(at * way, way.Right), null);
    }
}
