using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input.Outlines;
using Nestmark.Input.Yaml;
using Nestmark.Nesting;

namespace Nestmark.Input;

/// <summary>Reads the key flaws of a cloth: places by name, each a shape at a place or a band across the whole width.</summary>
internal static class FlawReader
{
    /// <summary>The flaws in the order of the file.</summary>
    /// <param name="cloth">The cloth's keys.</param>
    /// <param name="width">Its full width.</param>
    /// <param name="lay">How it is spread; not every form lies at a known place.</param>
    /// <param name="context">The job.</param>
    public static ImmutableArray<ClothFlaw> Read(MapReader cloth, Length width, LayForm lay, JobContext context)
    {
        if (cloth.Find("flaws") is not MapEntry entry || context.AsMap(entry.Value, cloth.PathOf("flaws")) is not MapReader flaws)
            return [];
        if (lay != LayForm.Best && !FlawPlaces.CanBeAvoidedOn(lay))
        {
            context.Error(entry.Key, flaws.Path, JobFaults.FlawsOnThisLay());
            return [];
        }
        return [.. flaws.Map.Entries.Select(flaw => One(flaw, flaws.Path, width, context)).OfType<ClothFlaw>()];
    }

    private static ClothFlaw? One(MapEntry entry, string parent, Length width, JobContext context)
    {
        string path = parent + "." + entry.Key.Text;
        if (context.AsMap(entry.Value, path) is not MapReader reader)
            return null;
        Polygon? area = reader.Find("from") is not null || reader.Find("to") is not null
            ? Band(reader, entry.Key, width, context)
            : new AreaReader(context, null).Read(reader, entry.Key) is DrawnPiece drawn ? Polygon.Of(drawn.Outline.Select(vertex => vertex.Point)) : null;
        reader.RefuseTheRest();
        return area is null ? null : new ClothFlaw(entry.Key.Text, area);
    }

    private static Polygon? Band(MapReader reader, JobNode node, Length width, JobContext context)
    {
        Length from = reader.Read("from", context.ZeroOrMore, Length.Zero);
        Length to = reader.Read("to", context.AboveZero, from);
        if (to > from && width > Length.Zero)
            return Polygon.Rectangle(to - from, width).Shifted(new Point(from.Micrometers, 0));
        context.Error(node, reader.Path, JobFaults.BandForm());
        return null;
    }
}
