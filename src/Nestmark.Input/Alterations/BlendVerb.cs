using System.Collections.Immutable;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>blend: some corners from another size.</summary>
internal static class BlendVerb
{
    /// <summary>The sizes that blends take corners from, so that their outlines are read even when none is cut in them.</summary>
    public static ImmutableArray<string> SizesTakenFrom(MapReader job)
    {
        if (job.Find("alter")?.Value is not ListNode list)
            return [];
        return
        [
            .. from map in list.Items.OfType<MapNode>()
               where map.Entries.Any(entry => entry.Key.Text == "blend")
               from entry in map.Entries
               where entry.Key.Text == "from" && entry.Value is TextNode { Text.Length: > 0 }
               select ((TextNode)entry.Value).Text,
        ];
    }

    public static AlterStep? Read(AlterEntry entry)
    {
        ImmutableArray<TextNode> pieces = entry.Pieces();
        ImmutableArray<TextNode> take = entry.Required("take", "take: [A, B] with the corners of the other size") ? entry.Names("take") : [];
        string from = entry.Required("from", "from: L with the other size") ? entry.Reader.FindText("from")?.Text ?? "" : "";
        string on = entry.Required("on", "on: D with a corner at which both sizes lie on each other") ? entry.Reader.Read("on", AlterTexts.CornerLetter, "") : "";
        ImmutableArray<string> sizes = entry.Sizes();
        ImmutableArray<string> corners = [.. take.Select(corner => corner.Text)];
        string words = $"blended with size {from} at {string.Join(", ", corners)}";
        return new AlterStep(run =>
        {
            foreach (TextNode piece in pieces)
            {
                AlterAsk search = new(piece, entry.Reader.PathOf(entry.Verb), sizes, words, _ => throw new InvalidOperationException());
                foreach (DraftedPiece target in run.Find(piece, search).Where(target => target.Draft.Size != from))
                {
                    if (run.InSize(piece.Text, from) is not { } other)
                    {
                        run.Context.Error(piece, search.Item, AlterFaults.BlendWithoutSize(piece.Text, from));
                        break;
                    }
                    run.Each(piece, search with { Sizes = [target.Draft.Size], Apply = draft => Blending.Apply(draft, other.Draft, corners, on) });
                }
            }
        });
    }
}
