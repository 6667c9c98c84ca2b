using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Tests;

/// <summary>Pieces and cloths made by hand, without the code that makes them from drafts.</summary>
internal static class TestPieces
{
    /// <summary>A polygon from text in millimeters, as "0 0, 40 0, 40 30".</summary>
    public static Polygon Shape(string millimeters) => Polygon.Of(millimeters.Split(',')
        .Select(pair => pair.Trim().Split(' ').Select(number => double.Parse(number, System.Globalization.CultureInfo.InvariantCulture)).ToArray())
        .Select(pair => Point.FromMillimeters(pair[0], pair[1])));

    /// <summary>A rectangle in millimeters, length along the grain.</summary>
    public static Piece Rectangle(string name, double along, double across, string cut) =>
        Of(name, FormattableString.Invariant($"0 0, {along} 0, {along} {across}, 0 {across}"), cut);

    /// <summary>A piece whose cutting line is its seam line; one "on fold" has its fold edge on y = 0.</summary>
    public static Piece Of(string name, string millimeters, string cut, GrainRule grain = GrainRule.Along, double? tiltDegrees = null, string size = "")
    {
        Polygon shape = Shape(millimeters);
        CutQuantity quantity = Cut(cut);
        Point[] onFold = [.. shape.Outer.Where(point => point.Y == 0).Order()];
        return new Piece
        {
            Name = name,
            Size = size,
            Cut = quantity,
            SeamLine = shape,
            CuttingLine = shape,
            Grainline = new Segment(new(shape.Bounds.MinX, shape.Bounds.MaxY / 2), new(shape.Bounds.MaxX, shape.Bounds.MaxY / 2)),
            FoldEdge = quantity.Kind == CutKind.OnFold ? new Segment(onFold[0], onFold[^1]) : null,
            CenterLine = null,
            Corners = [.. shape.Outer.Select((point, index) => new PieceCorner(((char)('A' + index)).ToString(), point))],
            Edges = [],
            Notches = [],
            Lines = [],
            Marks = [],
            Grain = grain,
            Tilt = tiltDegrees is { } degrees ? Angle.FromDegrees(degrees) : null,
        };
    }

    private static CutQuantity Cut(string cut)
    {
        string[] words = cut.Split(' ');
        CutKind kind = words.Length == 1 ? CutKind.Copies : words[1] == "on" ? CutKind.OnFold : CutKind.Pairs;
        return new CutQuantity(words[0][0] - '0', kind);
    }
}
