using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Carries what is drawn inside a piece over a cut.</summary>
internal static class LineParting
{
    private const double SamePlaceMicrometers = 1;

    /// <summary>Where a place goes; one that is taken out goes to the cut.</summary>
    public static Vector PlaceOf(Vector place, IParting parting) => parting.SideOf(place) switch
    {
        PaperSide.Still => place,
        PaperSide.Moving => parting.Moved(place),
        _ => OnLine(parting.Cuts[0], place),
    };

    /// <summary>Where a drawn line goes: both parts with their side, a straight piece where paper was put in, without what is taken out.</summary>
    public static ImmutableArray<Vector> Of(ImmutableArray<Vector> line, IParting parting)
    {
        List<Vector> places = [];
        for (int i = 0; i + 1 < line.Length; i++)
        {
            foreach ((Vector start, Vector end) in Divided(line[i], line[i + 1], parting))
            {
                PaperSide side = parting.SideOf(0.5 * (start + end));
                if (side == PaperSide.Gap)
                    continue;
                Append(places, side == PaperSide.Still ? start : parting.Moved(start));
                Append(places, side == PaperSide.Still ? end : parting.Moved(end));
            }
        }
        return [.. places];
    }

    private static IEnumerable<(Vector Start, Vector End)> Divided(Vector start, Vector end, IParting parting)
    {
        List<double> shares = [0, 1];
        foreach (StraightLine cut in parting.Cuts)
        {
            double before = cut.SideOf(start);
            double after = cut.SideOf(end);
            if (before * after < 0)
                shares.Add(before / (before - after));
        }
        shares.Sort();
        for (int i = 0; i + 1 < shares.Count; i++)
            yield return (start + shares[i] * (end - start), start + shares[i + 1] * (end - start));
    }

    private static void Append(List<Vector> places, Vector place)
    {
        if (places.Count == 0 || (places[^1] - place).Norm >= SamePlaceMicrometers)
            places.Add(place);
    }

    private static Vector OnLine(StraightLine line, Vector place) =>
        line.Place + (place - line.Place).Dot(line.Direction) * line.Direction;
}
