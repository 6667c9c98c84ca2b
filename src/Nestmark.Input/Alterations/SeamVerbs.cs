using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>raise and lower: a seam such as the waist, on every piece above and below it.</summary>
internal static class SeamVerbs
{
    private static readonly (string, SeamKeeping)[] KeepWords = [("sides", SeamKeeping.Sides), ("length", SeamKeeping.Length)];

    public static AlterStep? Raise(AlterEntry entry) => Moved(entry, "raised", 1);

    public static AlterStep? Lower(AlterEntry entry) => Moved(entry, "lowered", -1);

    private static AlterStep? Moved(AlterEntry entry, string done, int up)
    {
        string seam = entry.Reader.FindText(entry.Verb)?.Text ?? "";
        Length by = entry.By();
        SeamKeeping keeping = entry.Reader.ReadWord("keep", KeepWords, SeamKeeping.Sides);
        ImmutableArray<string> sizes = entry.Sizes();
        ImmutableArray<(TextNode Piece, string Edge)> above = Edges(entry, "above");
        ImmutableArray<(TextNode Piece, string Edge)> below = Edges(entry, "below");
        if (above.IsEmpty && below.IsEmpty)
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.NoSeamPieces());
        return new AlterStep(run =>
        {
            foreach ((TextNode piece, string edge) in above)
                run.Each(piece, Ask(piece, edge, by * -up));
            foreach ((TextNode piece, string edge) in below)
                run.Each(piece, Ask(piece, edge, by * up));
        });

        AlterAsk Ask(TextNode piece, string edge, Length outward) => new(
            piece, entry.Reader.Path, sizes,
            $"{done} {entry.Tape(by)} at the {seam} seam {edge}{(keeping == SeamKeeping.Length ? ", the seam as long as it was" : "")}",
            draft => SeamMoving.Apply(draft, edge, outward, keeping));
    }

    private static ImmutableArray<(TextNode Piece, string Edge)> Edges(AlterEntry entry, string key)
    {
        if (entry.Reader.Find(key) is not MapEntry found || entry.Context.AsMap(found.Value, entry.Reader.PathOf(key)) is not MapReader pieces)
            return [];
        return [.. pieces.Map.Entries.Select(piece => (piece.Key, pieces.Read(piece.Key.Text, AlterTexts.EdgeName, "")))];
    }
}
