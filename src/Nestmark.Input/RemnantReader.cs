using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input.Outlines;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;

namespace Nestmark.Input;

/// <summary>Reads the key remnants.</summary>
/// <remarks>What to record of a leftover: references/trade.md 12 (size, grain, right side, nap, flaws).</remarks>
internal static class RemnantReader
{
    private static readonly (string, Facing)[] Sides = [("right", Facing.Plain), ("wrong", Facing.Flipped)];

    /// <summary>The leftovers in the order of the file.</summary>
    public static ImmutableArray<Remnant> Read(MapReader job, ImmutableArray<Cloth> cloths, OutlineLibrary outlines, JobContext context)
    {
        if (job.Find("remnants") is not MapEntry entry || context.AsMap(entry.Value, "remnants") is not MapReader remnants)
            return [];
        return [.. remnants.Map.Entries.Select(remnant => One(remnant, cloths, outlines, context)).OfType<Remnant>()];
    }

    private static Remnant? One(MapEntry entry, ImmutableArray<Cloth> cloths, OutlineLibrary outlines, JobContext context)
    {
        string path = "remnants." + entry.Key.Text;
        if (!JobNames.IsGood(entry.Key.Text))
            context.Error(entry.Key, path, JobFaults.BadName(entry.Key.Text));
        if (context.AsMap(entry.Value, path) is not MapReader reader)
            return null;
        DrawnPiece? drawn = new AreaReader(context, outlines).Read(reader, entry.Key);
        string cloth = ClothOf(reader, cloths, context);
        Angle? grain = reader.Read<Angle?>("grain", ReadDirection, null);
        Facing side = reader.ReadWord("side", Sides, Facing.Plain);
        ImmutableArray<DrawnPiece> holes = Holes(reader, context);
        reader.RefuseTheRest();
        return drawn is null ? null : new Remnant(entry.Key.Text, cloth, Laid(drawn, holes, grain ?? DirectionOf(drawn), side));
    }

    private static string ClothOf(MapReader reader, ImmutableArray<Cloth> cloths, JobContext context)
    {
        string[] names = [.. cloths.Select(cloth => cloth.Name)];
        if (reader.FindText("cloth") is not TextNode text)
            return names.FirstOrDefault("");
        if (!names.Contains(text.Text))
            context.Error(text, reader.PathOf("cloth"), JobFaults.UnknownCloth(text.Text, names));
        return text.Text;
    }

    private static ImmutableArray<DrawnPiece> Holes(MapReader reader, JobContext context)
    {
        if (reader.Find("holes") is not MapEntry entry || entry.Value is BrokenNode)
            return [];
        if (entry.Value is not ListNode list)
        {
            context.Error(entry.Value, reader.PathOf("holes"), JobFaults.HolesForm());
            return [];
        }
        return [.. list.Items.Select(item => Hole(item, reader.PathOf("holes"), context)).OfType<DrawnPiece>()];
    }

    private static DrawnPiece? Hole(JobNode node, string path, JobContext context)
    {
        if (context.AsMap(node, path) is not MapReader reader)
            return null;
        DrawnPiece? hole = new AreaReader(context, null).Read(reader, node);
        reader.RefuseTheRest();
        return hole;
    }

    /// <summary>Grain along x, right side up, box at the origin; holes that reach beyond the edge are cut out of it.</summary>
    private static Polygon Laid(DrawnPiece drawn, ImmutableArray<DrawnPiece> holes, Angle grain, Facing side)
    {
        Polygon area = Polygon.Of(drawn.Outline.Select(vertex => vertex.Point));
        foreach (DrawnPiece hole in holes)
        {
            ImmutableArray<Polygon> left = Clipping.Difference(area, Polygon.Of(hole.Outline.Select(vertex => vertex.Point)));
            area = left.IsEmpty ? area : left.MaxBy(part => part.AreaSquareMillimeters)!;
        }
        Polygon turned = new Turn(Angle.Zero, side).Apply(Turn.By(-grain).Apply(area));
        return turned.Shifted(new Point(-turned.Bounds.MinX, -turned.Bounds.MinY));
    }

    private static Angle DirectionOf(DrawnPiece drawn) => drawn.Grainline is { } line
        ? Angle.OfDirection(line.End.X - line.Start.X, line.End.Y - line.Start.Y)
        : Angle.Zero;

    private static Reading<Angle?> ReadDirection(string text)
    {
        Reading<Angle> angle = RatioText.Direction(text);
        return new(angle.Value, angle.Fault);
    }
}
