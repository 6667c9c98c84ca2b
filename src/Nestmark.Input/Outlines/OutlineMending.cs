using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input.Outlines;

/// <summary>Makes a drawn ring fit for cutting: cleans it, thins dense ones, cuts off tiny loops, and names what it will not mend.</summary>
/// <remarks>Bounds: references/formats.md 9.</remarks>
internal static class OutlineMending
{
    private const int MostPointsRead = 200_000;
    private const int ManyPoints = 1_000;
    private const int MostLoops = 20;
    private const double LoopAreaRatio = 0.005;
    private const long LoopMicrometers = 5_000;
    private static readonly Length ThinningDistance = Length.FromMillimeters(0.02);

    /// <summary>The mended ring.</summary>
    /// <param name="ring">Any ring; first vertex not repeated.</param>
    /// <param name="placeOf">Says a place in words that the user can look up.</param>
    public static MendedOutline Mend(ImmutableArray<OutlineVertex> ring, Func<Point, string> placeOf)
    {
        List<Finding> findings = [];
        ImmutableArray<OutlineVertex> mended = Mend(ring, placeOf, findings);
        bool isBroken = findings.Exists(finding => finding.Severity == Severity.Error);
        return new MendedOutline(isBroken ? default : mended, [.. findings]);
    }

    private static ImmutableArray<OutlineVertex> Mend(ImmutableArray<OutlineVertex> ring, Func<Point, string> placeOf, List<Finding> findings)
    {
        if (ring.Length > MostPointsRead)
            return Refuse(findings, OutlineFaults.TooManyPoints(ring.Length, MostPointsRead, PieceMaking.MostPoints));
        CleanedRing cleaned = RingCleaning.Clean(ring);
        ImmutableArray<OutlineVertex> vertices = cleaned.Vertices;
        foreach (Point spike in cleaned.Spikes.Take(3))
            findings.Add(new Finding(Severity.Note, OutlineFaults.Spike(placeOf(spike))));
        if (IsTwiceRound(vertices))
            return Refuse(findings, OutlineFaults.TwiceRound());
        vertices = Thinned(vertices, findings);
        if (vertices.Length > PieceMaking.MostPoints)
            return Refuse(findings, OutlineFaults.TooManyPoints(ring.Length, MostPointsRead, PieceMaking.MostPoints));
        vertices = WithoutLoops(vertices, placeOf, findings);
        if (vertices.Length < 3 || TwiceArea(vertices) < 2e6)
            return Refuse(findings, OutlineFaults.TooFewPoints());
        NoteUnusualSize(vertices, findings);
        return vertices;
    }

    private static ImmutableArray<OutlineVertex> Refuse(List<Finding> findings, Fault fault)
    {
        if (!findings.Exists(finding => finding.Severity == Severity.Error))
            findings.Add(new Finding(Severity.Error, fault));
        return [];
    }

    private static bool IsTwiceRound(ImmutableArray<OutlineVertex> vertices)
    {
        int half = vertices.Length / 2;
        return half >= 3 && vertices.Length % 2 == 0
            && Enumerable.Range(0, half).All(i => vertices[i].Point == vertices[i + half].Point);
    }

    private static ImmutableArray<OutlineVertex> Thinned(ImmutableArray<OutlineVertex> vertices, List<Finding> findings)
    {
        if (vertices.Length <= ManyPoints)
            return vertices;
        ImmutableArray<OutlineVertex> thinned = RingThinning.Thin(vertices, ThinningDistance);
        if (thinned.Length < vertices.Length)
            findings.Add(new Finding(Severity.Note, OutlineFaults.Thinned(vertices.Length, thinned.Length)));
        return thinned;
    }

    private static ImmutableArray<OutlineVertex> WithoutLoops(ImmutableArray<OutlineVertex> vertices, Func<Point, string> placeOf, List<Finding> findings)
    {
        for (int loops = 0; ; loops++)
        {
            ImmutableArray<RingFlaw> flaws = PolygonValidity.FlawsOf([.. vertices.Select(vertex => vertex.Point)], 3);
            if (flaws.IsEmpty)
                return vertices;
            if (loops == MostLoops || CutOff(vertices, flaws[0]) is not ImmutableArray<OutlineVertex> shorter)
            {
                string places = string.Join("; ", flaws.Select(flaw => placeOf(flaw.Place)).Distinct());
                bool isFlat = TwiceArea(vertices) < 2e6 && flaws.All(flaw => flaw.Kind != RingFlawKind.Crossing);
                return Refuse(findings, isFlat ? OutlineFaults.TooFewPoints() : OutlineFaults.CrossesItself(places));
            }
            findings.Add(new Finding(Severity.Note, OutlineFaults.LoopCutOff(placeOf(flaws[0].Place))));
            vertices = RingCleaning.Clean(shorter).Vertices;
        }
    }

    /// <summary>The ring without the smaller of its two loops at a flaw, or <c>null</c> when the smaller one is no trifle.</summary>
    private static ImmutableArray<OutlineVertex>? CutOff(ImmutableArray<OutlineVertex> vertices, RingFlaw flaw)
    {
        OutlineVertex meeting = new(flaw.Place, VertexKind.Joint);
        ImmutableArray<OutlineVertex> between = [meeting, .. vertices[(flaw.FirstEdge + 1)..(flaw.SecondEdge + 1)]];
        ImmutableArray<OutlineVertex> around = [.. vertices[..(flaw.FirstEdge + 1)], meeting, .. vertices[(flaw.SecondEdge + 1)..]];
        (ImmutableArray<OutlineVertex> small, ImmutableArray<OutlineVertex> large) =
            TwiceArea(between) < TwiceArea(around) ? (between, around) : (around, between);
        Box box = Box.Around([.. small.Select(vertex => vertex.Point)]);
        bool isTrifle = TwiceArea(small) < LoopAreaRatio * TwiceArea(large) && Math.Max(box.Width, box.Height) <= LoopMicrometers;
        return isTrifle && large.Length < vertices.Length + 1 ? large : null;
    }

    private static double TwiceArea(ImmutableArray<OutlineVertex> vertices) =>
        Math.Abs((double)Polygon.TwiceSignedArea([.. vertices.Select(vertex => vertex.Point)]));

    private static void NoteUnusualSize(ImmutableArray<OutlineVertex> vertices, List<Finding> findings)
    {
        Box box = Box.Around([.. vertices.Select(vertex => vertex.Point)]);
        if (Math.Max(box.Width, box.Height) is < 5_000 or > 10_000_000)
            findings.Add(new Finding(Severity.Note, OutlineFaults.UnusualSize(box.Width / 1000.0, box.Height / 1000.0)));
    }
}
