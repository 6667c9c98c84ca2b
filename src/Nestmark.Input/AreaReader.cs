using Nestmark.Geometry;
using Nestmark.Input.Outlines;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>Reads areas of cloth, as leftovers, holes and flaws are: a rectangle, an L, a polygon, a circle or a drawn outline.</summary>
internal sealed class AreaReader(JobContext context, OutlineLibrary? outlines)
{
    private static readonly string[] DrawnKeys = ["rectangle", "l_shape", "polygon", "circle", "outline"];
    private static readonly string[] PlainKeys = ["rectangle", "l_shape", "polygon", "circle"];

    /// <summary>The area that the keys of a map describe, moved by its key at; or <c>null</c> after problems.</summary>
    public DrawnPiece? Read(MapReader reader, JobNode node)
    {
        MapEntry[] shapes = [.. (outlines is null ? PlainKeys : DrawnKeys).Select(reader.Find).OfType<MapEntry>()];
        if (shapes.Length != 1)
        {
            context.Error(node, reader.Path, JobFaults.AreaForm(outlines is null ? PlainKeys : DrawnKeys));
            return null;
        }
        string item = reader.PathOf(shapes[0].Key.Text);
        DrawnPiece? drawn = shapes[0].Key.Text switch
        {
            "rectangle" => InlineShapes.Rectangle(shapes[0], item, context),
            "l_shape" => LShape(shapes[0], item),
            "polygon" => InlineShapes.OfPoints(shapes[0], item, context),
            "circle" => InlineShapes.Circle(shapes[0], item, context),
            _ => Outline(shapes[0], item),
        };
        Point at = At(reader);
        return drawn is null ? null : drawn with { Outline = [.. drawn.Outline.Select(vertex => vertex with { Point = vertex.Point + at })] };
    }

    private Point At(MapReader reader)
    {
        if (reader.Find("at") is not MapEntry entry || entry.Value is BrokenNode)
            return Point.Origin;
        if (entry.Value is ListNode { Items: [TextNode x, TextNode y] } && context.AnyLength(x.Text) is { Fault: null } along && context.AnyLength(y.Text) is { Fault: null } across)
            return new Point(along.Value.Micrometers, across.Value.Micrometers);
        context.Error(entry.Value, reader.PathOf("at"), JobFaults.PolygonPoint());
        return Point.Origin;
    }

    /// <summary>"120 x 80 less 60 x 40": a rectangle without the rectangle in its far upper corner.</summary>
    private DrawnPiece? LShape(MapEntry entry, string item)
    {
        if (context.AsText(entry.Value, item) is not TextNode text)
            return null;
        string[] parts = text.Text.Split(" less ");
        if (parts.Length == 2 && SizeText.Read(parts[0], context.Units) is { Fault: null } whole && SizeText.Read(parts[1], context.Units) is { Fault: null } cut
            && cut.Value.Length < whole.Value.Length && cut.Value.Width < whole.Value.Width)
        {
            (long x, long y) = (whole.Value.Length.Micrometers, whole.Value.Width.Micrometers);
            (long left, long low) = (x - cut.Value.Length.Micrometers, y - cut.Value.Width.Micrometers);
            Point[] ring = [new(0, 0), new(x, 0), new(x, low), new(left, low), new(left, y), new(0, y)];
            return new DrawnPiece([.. ring.Select(point => new OutlineVertex(point, VertexKind.Joint))]);
        }
        context.Error(text, item, JobFaults.LShapeForm());
        return null;
    }

    private DrawnPiece? Outline(MapEntry entry, string item) => context.AsText(entry.Value, item) is TextNode text
        ? outlines!.Find(new PieceWish(text.Text, "", null, new CutQuantity(1, CutKind.Copies)), text, item)
        : null;
}
