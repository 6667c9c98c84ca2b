using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>split and join: they change which pieces there are.</summary>
internal static class PartVerbs
{
    public static AlterStep? Split(AlterEntry entry)
    {
        AlterLine? line = entry.Line("at");
        ImmutableArray<TextNode> pieces = entry.Pieces();
        (TextNode Name, string Corner)[] parts = Parts(entry);
        Length? seam = entry.Reader.Find("seam") is null ? null : entry.Reader.Read("seam", entry.Context.ZeroOrMore, Length.Zero);
        AlterAsk ask = new(entry.VerbEntry.Key, entry.Reader.PathOf(entry.Verb), entry.Sizes(), $"split at {entry.LineWords("at")}", _ => throw new InvalidOperationException());
        if (parts.Length != 2 || pieces.Length != 1)
        {
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.TwoParts());
            return null;
        }
        return new AlterStep(run =>
        {
            foreach (DraftedPiece piece in run.Find(pieces[0], ask))
            {
                if (!Named(run, parts, pieces[0].Text, piece.Draft.Size) || run.Sound(piece) is not { } sound)
                    continue;
                ImmutableArray<AlterationResult> results = Splitting.Apply(sound.Draft, line!, parts[0].Corner, parts[1].Corner, seam ?? sound.Draft.Seam);
                if (results[0].Fault is { } fault)
                    run.Refuse(piece, ask, fault);
                else
                    Replace(run, piece, [.. results.Select((result, i) => Renamed(run.Changed(sound, ask, result), parts[i].Name.Text))]);
            }
        });
    }

    public static AlterStep? Join(AlterEntry entry)
    {
        ImmutableArray<TextNode> pieces = entry.Pieces();
        ImmutableArray<TextNode> along = entry.Names("along");
        string name = entry.Reader.FindText("as")?.Text ?? "";
        string[] edges = [.. along.Select(edge => AlterTexts.EdgeName(edge.Text).Value).OfType<string>()];
        if (pieces.Length != 2 || edges.Length != 2)
        {
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.JoinForm());
            return null;
        }
        AlterAsk ask = new(entry.VerbEntry.Key, entry.Reader.PathOf(entry.Verb), entry.Sizes(), $"joined with {pieces[1].Text} along {edges[0]}", _ => throw new InvalidOperationException());
        return new AlterStep(run =>
        {
            ImmutableArray<DraftedPiece> others = run.Find(pieces[1], ask);
            foreach (DraftedPiece piece in run.Find(pieces[0], ask))
            {
                DraftedPiece? other = others.FirstOrDefault(candidate => candidate.Draft.Size == piece.Draft.Size) ?? others.FirstOrDefault();
                if (other is null || run.Sound(piece) is not { } sound || run.Sound(other) is not { } otherSound)
                    continue;
                AlterationResult result = Joining.Apply(sound.Draft, edges[0], otherSound.Draft, edges[1]);
                if (result.Fault is { } fault)
                    run.Refuse(piece, ask, fault);
                else
                    Replace(run, piece, [Renamed(run.Changed(sound, ask, result), name.Length > 0 ? name : pieces[0].Text)]);
            }
            foreach (DraftedPiece other in others)
                run.Pieces.Remove(other);
        });
    }

    private static (TextNode Name, string Corner)[] Parts(AlterEntry entry)
    {
        if (entry.Reader.Find("into") is not MapEntry into || entry.Context.AsMap(into.Value, entry.Reader.PathOf("into")) is not MapReader parts)
            return [];
        foreach (MapEntry part in parts.Map.Entries.Where(part => !JobNames.IsGood(part.Key.Text)))
            entry.Context.Error(part.Key, entry.Reader.PathOf("into"), JobFaults.BadName(part.Key.Text));
        return [.. parts.Map.Entries.Select(part => (part.Key, parts.Read(part.Key.Text, AlterTexts.CornerLetter, "")))];
    }

    private static bool Named(AlterationRun run, (TextNode Name, string Corner)[] parts, string whole, string size)
    {
        TextNode? taken = parts.Select(part => part.Name).FirstOrDefault(name => name.Text != whole
            && run.Pieces.Exists(piece => piece.Draft.Name == name.Text && piece.Draft.Size == size));
        if (taken is not null)
            run.Context.Error(taken, "alter", AlterFaults.PartNameTaken(taken.Text));
        return taken is null;
    }

    private static DraftedPiece Renamed(DraftedPiece piece, string name) => piece with { Draft = piece.Draft with { Name = name } };

    private static void Replace(AlterationRun run, DraftedPiece piece, ImmutableArray<DraftedPiece> parts)
    {
        int index = run.Pieces.IndexOf(piece);
        run.Pieces.RemoveAt(index);
        run.Pieces.InsertRange(index, parts);
    }
}
