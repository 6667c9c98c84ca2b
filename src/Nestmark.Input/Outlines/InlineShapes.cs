using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;

namespace Nestmark.Input.Outlines;

/// <summary>Shapes written in the job file itself: rectangle, polygon, circle; x along the grain.</summary>
internal static class InlineShapes
{
    /// <summary>"length x width", lowest left corner at the origin.</summary>
    public static DrawnPiece? Rectangle(MapEntry entry, string item, JobContext context)
    {
        if (context.AsText(entry.Value, item) is not TextNode text)
            return null;
        Reading<(Length Length, Length Width)> size = SizeText.Read(text.Text, context.Units);
        if (size.Fault is not null)
        {
            context.Error(text, item, size.Fault);
            return null;
        }
        Polygon rectangle = Polygon.Rectangle(size.Value.Length, size.Value.Width);
        return Mended([.. rectangle.Outer.Select(point => new OutlineVertex(point, VertexKind.Joint))], text, item, context);
    }

    /// <summary>A circle of a diameter about the origin.</summary>
    public static DrawnPiece? Circle(MapEntry entry, string item, JobContext context)
    {
        if (context.AsText(entry.Value, item) is not TextNode text)
            return null;
        Reading<Length> diameter = context.AboveZero(text.Text);
        if (diameter.Fault is not null)
        {
            context.Error(text, item, diameter.Fault);
            return null;
        }
        return Mended(Flattening.Closed([ArcSegment.Circle(default, diameter.Value.TotalMillimeters / 2)]), text, item, context);
    }

    /// <summary>A list of points.</summary>
    public static DrawnPiece? OfPoints(MapEntry entry, string item, JobContext context)
    {
        if (entry.Value is not ListNode { Items.Length: >= 3 } list)
        {
            if (entry.Value is not BrokenNode)
                context.Error(entry.Value, item, JobFaults.PolygonForm());
            return null;
        }
        List<OutlineVertex> vertices = [];
        foreach (JobNode node in list.Items)
        {
            if (PointOf(node, item, context) is Point point)
                vertices.Add(new OutlineVertex(point, VertexKind.Joint));
        }
        if (vertices.Count < list.Items.Length)
            return null;
        if (vertices[^1].Point == vertices[0].Point)
            vertices.RemoveAt(vertices.Count - 1);
        return Mended([.. vertices], list, item, context);
    }

    private static Point? PointOf(JobNode node, string item, JobContext context)
    {
        if (node is not ListNode { Items: [TextNode x, TextNode y] })
        {
            if (node is not BrokenNode)
                context.Error(node, item, JobFaults.PolygonPoint());
            return null;
        }
        Reading<Length> along = context.AnyLength(x.Text);
        Reading<Length> across = context.AnyLength(y.Text);
        if (along.Fault is not null)
            context.Error(x, item, along.Fault);
        if (across.Fault is not null)
            context.Error(y, item, across.Fault);
        return along.Fault is null && across.Fault is null ? new Point(along.Value.Micrometers, across.Value.Micrometers) : null;
    }

    private static DrawnPiece? Mended(ImmutableArray<OutlineVertex> vertices, JobNode node, string item, JobContext context)
    {
        MendedOutline mended = OutlineMending.Mend(vertices, point => PlaceText(point, context));
        foreach (Finding finding in mended.Findings)
            context.Problems.Add(finding.Severity, context.PlaceOf(node, item), finding.Fault);
        return mended.Vertices.IsDefault ? null : new DrawnPiece(mended.Vertices);
    }

    private static string PlaceText(Point point, JobContext context)
    {
        double perUnit = (double)LengthUnits.MicrometersIn(context.Units);
        return string.Create(CultureInfo.InvariantCulture, $"{point.X / perUnit:0.##}, {point.Y / perUnit:0.##} {LengthUnits.WordOf(context.Units)}");
    }
}
