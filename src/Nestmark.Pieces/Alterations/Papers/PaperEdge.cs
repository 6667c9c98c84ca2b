using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>An edge of an outline under alteration, counter-clockwise, both corners among its points.</summary>
internal sealed record PaperEdge(string From, string To, ImmutableArray<PaperPoint> Points, EdgeTraits Traits)
{
    public string Name => From + "-" + To;

    public bool IsFold => Traits.Kind == EdgeKind.Fold;

    public Vector Start => Points[0].Place;

    public Vector End => Points[^1].Place;

    public double LengthMicrometers => Points.Zip(Points.Skip(1), (here, next) => (next.Place - here.Place).Norm).Sum();

    /// <summary>How far along the edge each point lies, from 0 at the start to 1 at the end.</summary>
    public ImmutableArray<double> Shares
    {
        get
        {
            double whole = LengthMicrometers;
            double sum = 0;
            List<double> shares = [0];
            for (int i = 1; i < Points.Length; i++)
            {
                sum += (Points[i].Place - Points[i - 1].Place).Norm;
                shares.Add(i == Points.Length - 1 ? 1 : whole == 0 ? 0 : sum / whole);
            }
            return [.. shares];
        }
    }

    /// <summary>Every point somewhere else, told by its place and its share of the edge.</summary>
    public PaperEdge Mapped(Func<Vector, double, Vector> map)
    {
        ImmutableArray<double> shares = Shares;
        return this with { Points = [.. Points.Select((point, i) => point with { Place = map(point.Place, shares[i]) })] };
    }

    /// <summary>The ends moved by two displacements and all between by its share, so that a straight edge stays straight and a curve stays smooth.</summary>
    public PaperEdge Stretched(Vector startBy, Vector endBy) => Mapped((place, share) => place + (1 - share) * startBy + share * endBy);

    /// <summary>The place at a distance along the edge from its start.</summary>
    public Vector PlaceAt(double micrometers)
    {
        double left = micrometers;
        for (int i = 0; i + 1 < Points.Length; i++)
        {
            Vector step = Points[i + 1].Place - Points[i].Place;
            if (left <= step.Norm && step.Norm > 0)
                return Points[i].Place + left / step.Norm * step;
            left -= step.Norm;
        }
        return End;
    }

    /// <summary>The edge with a point at a place on it; the point that stands there already, or a new one.</summary>
    public PaperEdge WithPoint(Vector place, Func<PaperPoint, PaperPoint> mark)
    {
        const double SamePlaceMicrometers = 5;
        (double distance, int index, Vector on) = Enumerable.Range(0, Points.Length - 1)
            .Select(i => (i, On: Nearest.OnSegment(Points[i].Place, Points[i + 1].Place, place)))
            .Select(pair => ((pair.On - place).Norm, pair.i, pair.On)).MinBy(candidate => candidate.Norm);
        foreach (int end in (int[])[index, index + 1])
        {
            if ((Points[end].Place - on).Norm < SamePlaceMicrometers)
                return this with { Points = Points.SetItem(end, mark(Points[end])) };
        }
        return this with { Points = Points.Insert(index + 1, mark(PaperPoint.AddedAt(on))) };
    }

    /// <summary>Distance of a place from the edge.</summary>
    public double DistanceMicrometers(Vector place) => Enumerable.Range(0, Points.Length - 1)
        .Min(i => (Nearest.OnSegment(Points[i].Place, Points[i + 1].Place, place) - place).Norm);
}
