using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>spread and close: slashes that are opened or overlapped.</summary>
internal static class SlashVerbs
{
    private const int MostSlashes = 50;

    private static readonly (string, SlashOpening)[] OpenWords = [("pivot", SlashOpening.Pivot), ("parallel", SlashOpening.Parallel)];

    private delegate AlterationResult Slashing(
        PieceDraft draft, ImmutableArray<Slash> slashes, Length by, SlashOpening opening, SideTruing truing);

    public static AlterStep? Spread(AlterEntry entry) => Read(entry, "spread", SlashSpreading.Apply);

    public static AlterStep? Close(AlterEntry entry) => Read(entry, "closed", SlashClosing.Apply);

    private static AlterStep? Read(AlterEntry entry, string done, Slashing slashing)
    {
        Length by = entry.By();
        SlashOpening opening = entry.Reader.ReadWord("way", OpenWords, SlashOpening.Pivot);
        SideTruing truing = entry.Truing(SideTruing.Smooth);
        ImmutableArray<TextNode> pieces = entry.Pieces();
        ImmutableArray<Slash> slashes = Slashes(entry);
        if (slashes.IsEmpty)
            return null;
        string count = slashes.Length == 1 ? "at one slash" : string.Create(CultureInfo.InvariantCulture, $"at {slashes.Length} slashes, {entry.Tape(by / slashes.Length)} each");
        AlterAsk ask = new(entry.VerbEntry.Key, entry.Reader.PathOf(entry.Verb), entry.Sizes(), $"{done} {entry.Tape(by)} {count}",
            draft => slashing(draft, slashes, by, opening, truing))
        {
            Note = draft => draft.Cut.Kind == CutKind.OnFold ? $"{entry.Tape(by)} on the half piece are {entry.Tape(by * 2)} on the whole." : "",
        };
        return new AlterStep(run =>
        {
            foreach (TextNode piece in pieces)
                run.Each(piece, ask);
        });
    }

    /// <summary>A list of slashes; or a number of them evenly between two edges; or one between two places.</summary>
    private static ImmutableArray<Slash> Slashes(AlterEntry entry)
    {
        if (entry.Reader.Find("slashes")?.Value is ListNode list)
            return [.. list.Items.Select(node => One(node, entry)).OfType<Slash>()];
        if (entry.Reader.Find("slashes") is not null)
            return Even(entry);
        if (entry.Reader.Find("from") is null || entry.Reader.Find("to") is null)
        {
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.SlashEnds());
            return [];
        }
        return Between(entry.Reader, entry) is { } slash ? [slash] : [];
    }

    private static Slash? One(JobNode node, AlterEntry entry)
    {
        if (entry.Context.AsMap(node, entry.Reader.PathOf("slashes")) is not MapReader ends)
            return null;
        Slash? slash = Between(ends, entry);
        ends.RefuseTheRest();
        return slash;
    }

    private static Slash? Between(MapReader ends, AlterEntry entry)
    {
        (AlterPlace? from, AlterPlace? to) = (entry.Place(ends, "from"), entry.Place(ends, "to"));
        return from is null || to is null ? null : new Slash(from, to);
    }

    private static ImmutableArray<Slash> Even(AlterEntry entry)
    {
        int count = entry.Reader.Read("slashes", ReadCount, 0);
        string from = entry.Reader.FindText("from")?.Text ?? "";
        string to = entry.Reader.FindText("to")?.Text ?? "";
        string? edge = AlterTexts.EdgeName(from).Value;
        string? end = AlterTexts.EdgeName(to).Value ?? AlterTexts.CornerLetter(to).Value;
        if (edge is null || end is null)
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.EvenSlashEnds());
        return count == 0 || edge is null || end is null ? [] : Slash.Evenly(edge, end, count);
    }

    private static Reading<int> ReadCount(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= MostSlashes
            ? new(count, null)
            : new(0, AlterFaults.ShareForm(text));
}
