using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A draft taken apart for an alteration: lettered edges with all that stands on them, and what is drawn inside. In the frame of the drawing.</summary>
internal sealed record Paper
{
    /// <summary>The draft it was made from; everything that no alteration touches is taken from it.</summary>
    public required PieceDraft Draft { get; init; }

    /// <summary>Edges in order, counter-clockwise.</summary>
    public required ImmutableArray<PaperEdge> Edges { get; init; }

    public required ImmutableArray<PaperLine> Lines { get; init; }

    public required ImmutableArray<PaperMark> Marks { get; init; }

    public required (Vector Start, Vector End)? Grainline { get; init; }

    /// <summary>Along the grain toward the arrow's head; length one.</summary>
    public required Vector Along { get; init; }

    /// <summary>Across the grain: away from the fold, or to the left of the arrow; length one.</summary>
    public required Vector Across { get; init; }

    /// <summary>The number of the next free letter: above every letter that is or was in use when the alteration began.</summary>
    public required int NextLetter { get; init; }

    public PaperEdge? Fold => Edges.FirstOrDefault(edge => edge.IsFold);

    /// <summary>All points once around.</summary>
    public IEnumerable<PaperPoint> Ring => Edges.SelectMany(edge => edge.Points.SkipLast(1));

    public IEnumerable<Vector> Places => Ring.Select(point => point.Place);

    public string EdgeNames => string.Join(", ", Edges.Select(edge => edge.Name));

    public string Letters => string.Join(", ", Edges.Select(edge => edge.From));

    /// <summary>The place of a corner; <c>null</c> where there is no such letter.</summary>
    public Vector? Corner(string letter) => Edges.FirstOrDefault(edge => edge.From == letter)?.Start;

    /// <summary>The number of an edge by its name, either way round; below zero where there is none.</summary>
    public int IndexOf(string edge)
    {
        int index = Edges.ToList().FindIndex(candidate => candidate.Name == edge);
        return index >= 0 ? index : Edges.ToList().FindIndex(candidate => candidate.To + "-" + candidate.From == edge);
    }

    public PaperEdge Previous(int index) => Edges[(index + Edges.Length - 1) % Edges.Length];

    public PaperEdge Next(int index) => Edges[(index + 1) % Edges.Length];

    /// <summary>The whole piece somewhere else by a rigid motion that keeps the way round.</summary>
    public Paper Mapped(Func<Vector, Vector> map) => this with
    {
        Edges = [.. Edges.Select(edge => edge.Mapped((place, _) => map(place)))],
        Lines = [.. Lines.Select(line => line with { Places = [.. line.Places.Select(map)] })],
        Marks = [.. Marks.Select(mark => mark with { Place = map(mark.Place) })],
        Grainline = Grainline is var (start, end) ? (map(start), map(end)) : null,
        Along = map(Along) - map(default),
        Across = map(Across) - map(default),
    };

    /// <summary>The edges in order with corners that meet: each edge's end where the next begins.</summary>
    public static ImmutableArray<PaperEdge> Closed(IReadOnlyList<PaperEdge> edges) =>
    [
        .. edges.Select((edge, i) => edge with
        {
            Points = edge.Points.SetItem(edge.Points.Length - 1, edge.Points[^1] with { Place = edges[(i + 1) % edges.Count].Start }),
        }),
    ];
}
