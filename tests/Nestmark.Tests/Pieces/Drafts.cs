using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests.Pieces;

/// <summary>Small drafts from text. Places are "x y, x y" in millimeters.</summary>
internal static class Drafts
{
    /// <summary>A draft whose vertices are all joints, with one allowance all around and a point limit that never cuts.</summary>
    public static PieceDraft Of(string outline, double seamMillimeters = 0) =>
        Of(Places(outline).Select(place => new OutlineVertex(place, VertexKind.Joint)), seamMillimeters);

    public static PieceDraft Of(IEnumerable<OutlineVertex> outline, double seamMillimeters = 0) => new()
    {
        Name = "sample",
        Size = "",
        Outline = [.. outline],
        Meaning = OutlineMeaning.SeamLine,
        Cut = new CutQuantity(1, CutKind.Copies),
        Seam = Length.FromMillimeters(seamMillimeters),
        Edges = [],
        PointLimitRatio = 100,
        Grainline = null,
        FoldLine = null,
        FoldEdge = "",
        Notches = [],
        Lines = [],
        Marks = [],
        Grain = GrainRule.Along,
        Tilt = null,
    };

    public static PieceDraft OnFold(this PieceDraft draft, string edge) =>
        draft with { Cut = new CutQuantity(1, CutKind.OnFold), FoldEdge = edge };

    public static PieceDraft WithEdge(this PieceDraft draft, string name, double widthMillimeters, AllowanceEnds ends = AllowanceEnds.Mitred)
    {
        string[] letters = name.Split('-');
        return draft with { Edges = draft.Edges.Add(new EdgeAllowance(letters[0], letters[1], Length.FromMillimeters(widthMillimeters), ends)) };
    }

    public static PieceDraft WithNotch(this PieceDraft draft, string name, string place) =>
        draft with { Notches = draft.Notches.Add(new PieceMark(name, Places(place)[0])) };

    /// <summary>The same drawing, turned about its origin.</summary>
    public static PieceDraft Turned(this PieceDraft draft, Turn turn) => draft with
    {
        Outline = [.. draft.Outline.Select(vertex => vertex with { Point = turn.Apply(vertex.Point) })],
        Grainline = Turned(draft.Grainline, turn),
        FoldLine = Turned(draft.FoldLine, turn),
        Notches = [.. draft.Notches.Select(mark => mark with { Place = turn.Apply(mark.Place) })],
        Marks = [.. draft.Marks.Select(mark => mark with { Place = turn.Apply(mark.Place) })],
    };

    public static ImmutableArray<Point> Places(string text) => [.. text.Split(',').Select(Place)];

    public static Segment Line(string text) => new(Places(text)[0], Places(text)[1]);

    /// <summary>The piece; fails with the faults where there is none.</summary>
    public static Piece Made(this PieceDraft draft)
    {
        PieceResult result = PieceMaking.Make(draft);
        Assert.True(result.Piece is not null, Text(result));
        return result.Piece;
    }

    /// <summary>The faults of a draft that gives no piece, one a line: subject, what, hint.</summary>
    public static string Refused(this PieceDraft draft)
    {
        PieceResult result = PieceMaking.Make(draft);
        Assert.Null(result.Piece);
        return Text(result);
    }

    public static string Notes(this PieceDraft draft)
    {
        PieceResult result = PieceMaking.Make(draft);
        Assert.NotNull(result.Piece);
        return Text(result);
    }

    public static string Text(IEnumerable<Point> points) =>
        string.Join(", ", points.Select(point => string.Create(CultureInfo.InvariantCulture, $"{point.XMillimeters} {point.YMillimeters}")));

    private static string Text(PieceResult result) =>
        string.Join("\n", result.Faults.Select(fault => $"{fault.Subject}: {fault.What} {fault.Hint}"));

    private static Segment? Turned(Segment? segment, Turn turn) =>
        segment is null ? null : new Segment(turn.Apply(segment.Start), turn.Apply(segment.End));

    private static Point Place(string text)
    {
        double[] numbers = [.. text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
        return Point.FromMillimeters(numbers[0], numbers[1]);
    }
}
