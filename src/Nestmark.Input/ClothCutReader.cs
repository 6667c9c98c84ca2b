using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>Reads from which cloths a piece is cut: the key cloth, or cloths with what differs from cloth to cloth.</summary>
/// <remarks>
/// What an entry of cloths leaves out is as the piece says. A seam allowance of its own replaces the piece's and those of its edges:
/// seam 0 for an interfacing is meant for the hem too. Woven interfacing follows the grain of the piece, other interfacing any (references/trade.md 9.3).
/// </remarks>
internal sealed class ClothCutReader(JobContext context, PieceReader pieces)
{
    /// <summary>The cloths in the order of the file, one at least.</summary>
    /// <param name="reader">The piece's keys.</param>
    /// <param name="name">The piece's name.</param>
    /// <param name="pattern">The piece as its own keys say.</param>
    /// <param name="need">Whether it has to say how often it is cut.</param>
    public ImmutableArray<ClothCut> Read(MapReader reader, TextNode name, PieceDraft pattern, CutNeed need)
    {
        TextNode? one = reader.FindText("cloth");
        MapEntry? several = reader.Find("cloths");
        bool hasCut = reader.Find("cut") is not null || need == CutNeed.FromShape;
        ImmutableArray<ClothCut> cuts = [];
        if (several is not null && context.AsMap(several.Value, reader.PathOf("cloths")) is MapReader cloths)
        {
            if (one is not null)
                context.Error(several.Key, reader.PathOf("cloths"), JobFaults.ClothAndCloths());
            if (cloths.Map.Entries.IsEmpty)
                context.Error(several.Value, reader.PathOf("cloths"), JobFaults.NoClothOfPiece());
            cuts = [.. cloths.Map.Entries.Select(entry => Of(entry, cloths.PathOf(entry.Key.Text), pattern, hasCut))];
        }
        else if (!hasCut && several is null)
            context.Error(name, reader.Path, JobFaults.MissingCut());
        return cuts.IsEmpty ? [new ClothCut(one?.Text ?? "", one, reader.PathOf("cloth"), pattern, null)] : cuts;
    }

    private ClothCut Of(MapEntry entry, string path, PieceDraft pattern, bool hasCut)
    {
        MapNode map = entry.Value switch
        {
            MapNode keys => keys,
            TextNode { Text.Length: > 0 } cut => new MapNode([new MapEntry(new TextNode("cut", cut.Line, cut.Column), cut)], cut.Line, cut.Column),
            _ => new MapNode([], entry.Key.Line, entry.Key.Column),
        };
        if (entry.Value is not (MapNode or TextNode { Text.Length: > 0 } or BrokenNode))
            context.Error(entry.Value, path, JobFaults.ClothOfPieceForm());
        MapReader own = new(map, path, context);
        if (own.Find("cut") is null && !hasCut && entry.Value is MapNode)
            context.Error(entry.Key, path, JobFaults.MissingCut());
        PieceDraft changed = Changed(own, pattern);
        own.RefuseTheRest();
        return new ClothCut(entry.Key.Text, entry.Key, path, changed, own);
    }

    private PieceDraft Changed(MapReader own, PieceDraft pattern)
    {
        MapEntry? seam = own.Find("seam");
        AllowanceEnds ends = own.ReadWord("ends", PieceReader.EndsWords, AllowanceEnds.Mitred);
        ImmutableArray<EdgeAllowance> edges = pieces.Edges(own, ends);
        bool hasEdges = own.Find("edges") is not null;
        if ((seam ?? own.Find("edges")) is MapEntry allowance && pattern.Meaning == OutlineMeaning.CuttingLine)
            context.Error(allowance.Key, own.PathOf(allowance.Key.Text), JobFaults.AllowanceOfCuttingLine());
        return pattern with
        {
            Cut = own.Read("cut", CutText.Read, pattern.Cut),
            Seam = own.Read("seam", context.ZeroOrMore, pattern.Seam),
            Edges = hasEdges ? edges : seam is null ? pattern.Edges : [],
            Grain = own.ReadWord("grain", PieceReader.GrainWords, pattern.Grain),
            Tilt = own.Read<Angle?>("tilt", PieceReader.ReadTilt, pattern.Tilt),
        };
    }
}
