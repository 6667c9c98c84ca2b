using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.Lays;

/// <summary>A placement with the number it has on every sheet.</summary>
/// <param name="Number">From 1, in the marker's order.</param>
/// <param name="Copies">How many copies of this piece and size the marker holds.</param>
/// <param name="Placement">The placement.</param>
internal sealed record Laid(int Number, int Copies, Placement Placement)
{
    /// <summary>All placements of a cloth, numbered.</summary>
    public static ImmutableArray<Laid> AllOf(ClothPlan cloth)
    {
        Dictionary<(string, string), int> copies = cloth.Marker.Placements
            .GroupBy(placement => (placement.Piece.Name, placement.Size))
            .ToDictionary(group => group.Key, group => group.Count());
        return [.. cloth.Marker.Placements.Select((placement, i) => new Laid(i + 1, copies[(placement.Piece.Name, placement.Size)], placement))];
    }

    /// <summary>Its cutting line on a picture, outer ring first.</summary>
    public ImmutableArray<ImmutableArray<Spot>> CuttingRings(Frame frame) => frame.Of(Placement.CuttingLine);

    /// <summary>Adds what is to be cut: the cutting line without the edge on the fold, which is drawn as a fold instead.</summary>
    public void DrawCuttingLine(Drawing drawing, Frame frame, Ink ink)
    {
        if (Placement.Contact != FoldContact.OnFold)
        {
            drawing.Add(new PathFigure(Role.CuttingLine, CuttingRings(frame), PathEnds.Closed, ink, null));
            return;
        }
        foreach (ImmutableArray<Point> run in RunsOffTheFold(Placement.Piece.CuttingLine.Outer))
            drawing.Add(new PathFigure(Role.CuttingLine, [[.. run.Select(Placement.Map).Select(frame.Of)]], PathEnds.Open, ink, null));
        if (!Placement.CuttingLine.Holes.IsEmpty)
            drawing.Add(new PathFigure(Role.CuttingLine, CuttingRings(frame)[1..], PathEnds.Closed, ink, null));
    }

    // The fold edge of a half piece is on its own y = 0, exactly.
    private static List<ImmutableArray<Point>> RunsOffTheFold(ImmutableArray<Point> ring)
    {
        bool OnFold(int i) => ring[i % ring.Length].Y == 0 && ring[(i + 1) % ring.Length].Y == 0;
        int first = Enumerable.Range(0, ring.Length).FirstOrDefault(i => OnFold(i) && !OnFold(i + 1), ring.Length - 1) + 1;
        List<ImmutableArray<Point>> runs = [];
        List<Point> run = [];
        for (int i = first; i < first + ring.Length; i++)
        {
            if (!OnFold(i))
                run.Add(ring[i % ring.Length]);
            if (run.Count > 0 && (OnFold(i) || i == first + ring.Length - 1))
            {
                runs.Add([.. run, ring[(OnFold(i) ? i : i + 1) % ring.Length]]);
                run.Clear();
            }
        }
        return runs;
    }

    /// <summary>Its seam line on a picture, outer ring first.</summary>
    public ImmutableArray<ImmutableArray<Spot>> SeamRings(Frame frame) => frame.Of(Placement.Piece.SeamLine.Mapped(Placement.Map));
}
