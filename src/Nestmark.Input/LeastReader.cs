using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>Reads the key least of a piece: allowances that may be narrower where cloth is short.</summary>
internal static class LeastReader
{
    private const string Key = "least";
    private const string SeamKey = "seam";

    /// <summary>The allowances in the order of the file; none without the key.</summary>
    public static ImmutableArray<LeastAllowance> Read(MapReader piece, JobContext context)
    {
        if (piece.Find(Key) is not MapEntry entry || entry.Value is BrokenNode)
            return [];
        if (entry.Value is not MapNode { Entries.IsEmpty: false } map)
        {
            context.Error(entry.Value, piece.PathOf(Key), LeastFaults.Form());
            return [];
        }
        MapReader reader = new(map, piece.PathOf(Key), context);
        return [.. map.Entries.Select(one => One(one.Key, reader)).OfType<LeastAllowance>()];
    }

    /// <summary>Reports edges that the piece does not have, and allowances that are narrower already.</summary>
    /// <param name="piece">The piece as described; an alteration may have taken an edge away, and a cloth may have its own allowances.</param>
    /// <param name="made">The piece.</param>
    /// <param name="context">Takes the problems.</param>
    public static void Check(DraftedPiece piece, Piece made, JobContext context)
    {
        foreach (LeastAllowance least in piece.Draft.Least)
        {
            if (FaultOf(piece, made, least, context) is not Fault fault)
                continue;
            MapEntry entry = piece.Keys.Map.Entries.First(candidate => candidate.Key.Text == Key);
            context.Error(entry.Value, piece.Keys.Path + "." + Key, fault);
        }
    }

    private static LeastAllowance? One(TextNode key, MapReader reader)
    {
        Reading<string> edge = key.Text == SeamKey ? new("", null) : PieceReader.ReadEdge(key.Text);
        Length width = reader.Read(key.Text, reader.Context.ZeroOrMore, Length.Zero);
        if (edge.Fault is not null)
            reader.Context.Error(key, reader.Path, edge.Fault);
        return edge.Value is string name ? new LeastAllowance(name, width) : null;
    }

    private static Fault? FaultOf(DraftedPiece piece, Piece made, LeastAllowance least, JobContext context)
    {
        if (piece.Draft.Meaning == OutlineMeaning.CuttingLine)
            return LeastFaults.OfCuttingLine(made.Title);
        if (AllowanceNarrowing.Now(piece.Draft, made, least) is not Length now)
            return piece.Changes.IsEmpty ? LeastFaults.NoSuchEdge(made, least.Edge) : null;
        bool hasOwn = piece.Keys.Cloth.Own?.Map.Entries.Any(entry => entry.Key.Text is "seam" or "edges") ?? false;
        return least.Width > now && !hasOwn ? LeastFaults.NarrowerAlready(made.Title, least, now, context.System) : null;
    }
}
