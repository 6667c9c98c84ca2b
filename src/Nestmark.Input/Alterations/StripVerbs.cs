using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>widen, narrow, lengthen, shorten: a strip put in or taken out at a line.</summary>
internal static class StripVerbs
{
    private delegate AlterationResult AtLine(PieceDraft draft, AlterLine line, Length by, SideTruing truing);

    private delegate AlterationResult AtFold(PieceDraft draft, Length by, SideTruing truing);

    public static AlterStep? Widen(AlterEntry entry) => Across(entry, "widened", Widening.AtLine, Widening.AtFold);

    public static AlterStep? Narrow(AlterEntry entry) => Across(entry, "narrowed", Narrowing.AtLine, Narrowing.AtFold);

    public static AlterStep? Lengthen(AlterEntry entry) => Along(entry, "lengthened", Lengthening.Apply);

    public static AlterStep? Shorten(AlterEntry entry) => Along(entry, "shortened", Shortening.Apply);

    private static AlterStep? Across(AlterEntry entry, string done, AtLine atLine, AtFold atFold)
    {
        bool isAtFold = entry.Reader.Find("at")?.Value is TextNode { Text: "fold" };
        Length by = entry.By();
        SideTruing truing = entry.Truing(isAtFold ? SideTruing.AsCut : SideTruing.Smooth);
        AlterLine? line = isAtFold ? null : entry.Line("at");
        ImmutableArray<TextNode> pieces = entry.Pieces();
        ImmutableArray<string> sizes = entry.Sizes();
        string change = done == "widened" ? "gains" : "loses";
        string where = isAtFold ? $"at the fold, {entry.Tape(by * 2)} in all" : $"at {entry.LineWords("at")}";
        AlterAsk ask = new(entry.VerbEntry.Key, entry.Reader.PathOf(entry.Verb), sizes, $"{done} {entry.Tape(by)} {where}",
            draft => isAtFold ? atFold(draft, by, truing) : atLine(draft, line!, by, truing))
        {
            Note = draft => draft.Cut.Kind == CutKind.OnFold ? $"{entry.Tape(by)} on the half piece: the whole {change} {entry.Tape(by * 2)}." : "",
        };
        return new AlterStep(run => EachOf(run, pieces, ask));
    }

    private static AlterStep? Along(AlterEntry entry, string done, AtLine atLine)
    {
        Length by = entry.By();
        SideTruing truing = entry.Truing(SideTruing.Smooth);
        AlterLine? line = entry.Line("at");
        ImmutableArray<TextNode> pieces = entry.Pieces();
        AlterAsk ask = new(entry.VerbEntry.Key, entry.Reader.PathOf(entry.Verb), entry.Sizes(),
            $"{done} {entry.Tape(by)} at {entry.LineWords("at")}", draft => atLine(draft, line!, by, truing));
        return new AlterStep(run => EachOf(run, pieces, ask));
    }

    private static void EachOf(AlterationRun run, ImmutableArray<TextNode> pieces, AlterAsk ask)
    {
        foreach (TextNode piece in pieces)
            run.Each(piece, ask);
    }
}
