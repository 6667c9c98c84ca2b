using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>move, extend, cut off and complete.</summary>
internal static class ShapeVerbs
{
    private static readonly (string, StripEnds)[] EndsWords =
        [("square", StripEnds.Square), ("reflected", StripEnds.Reflected), ("along sides", StripEnds.AlongSides)];

    public static AlterStep? Move(AlterEntry entry)
    {
        string corner = entry.Reader.Read("corner", AlterTexts.CornerLetter, "");
        string edge = entry.Reader.Read("edge", AlterTexts.EdgeName, "");
        Length along = entry.Reader.Read("along", entry.Context.AnyLength, Length.Zero);
        Length across = entry.Reader.Read("across", entry.Context.AnyLength, Length.Zero);
        Length outward = entry.Reader.Read("out", entry.Context.AnyLength, Length.Zero);
        if (corner.Length == 0 == (edge.Length == 0))
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.CornerOrEdge());
        if (along == Length.Zero && across == Length.Zero && outward == Length.Zero)
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.NothingToMove());
        if (outward != Length.Zero && edge.Length > 0 && along == Length.Zero && across == Length.Zero)
        {
            string way = outward > Length.Zero ? $"{entry.Tape(outward)} outward" : $"{entry.Tape(-outward)} inward";
            return Each(entry, $"moved at edge {edge} {way}", draft => EdgeMoving.Outward(draft, edge, outward), _ => "");
        }
        if (outward != Length.Zero)
            entry.Context.Error(entry.Reader.Map, entry.Reader.Path, AlterFaults.NothingToMove());
        string what = corner.Length > 0 ? $"corner {corner}" : $"edge {edge}";
        return Each(entry, $"moved at {what} {entry.Tape(along)} along and {entry.Tape(across)} across the grain",
            draft => corner.Length > 0 ? CornerMoving.Apply(draft, corner, along, across) : EdgeMoving.Apply(draft, edge, along, across), _ => "");
    }

    public static AlterStep? Extend(AlterEntry entry)
    {
        string edge = entry.Edge("edge");
        Length by = entry.By();
        string label = entry.Reader.FindText("as")?.Text ?? "fold line";
        StripEnds ends = entry.Reader.ReadWord("ends", EndsWords, StripEnds.Square);
        return Each(entry, $"extended {entry.Tape(by)} at edge {edge} ({label})", draft => WidthAdding.Apply(draft, edge, by, ends, label), _ => "");
    }

    public static AlterStep? CutOff(AlterEntry entry)
    {
        AlterLine? line = entry.Line("at");
        string keep = entry.Reader.Read("keep", AlterTexts.CornerLetter, "");
        return Each(entry, $"cut off at {entry.LineWords("at")}", draft => CuttingOff.Apply(draft, line!, keep), _ => "");
    }

    public static AlterStep? Complete(AlterEntry entry) =>
        Each(entry, "completed by its mirror image", HalfCompleting.Apply, draft => $"it is now cut {(draft.Cut with { Kind = CutKind.Copies }).ToString()}, opened out.");

    private static AlterStep Each(AlterEntry entry, string done, Func<PieceDraft, AlterationResult> apply, Func<PieceDraft, string> note)
    {
        ImmutableArray<TextNode> pieces = entry.Pieces();
        AlterAsk ask = new(entry.VerbEntry.Key, entry.Reader.PathOf(entry.Verb), entry.Sizes(), done, apply) { Note = note };
        return new AlterStep(run =>
        {
            foreach (TextNode piece in pieces)
                run.Each(piece, ask);
        });
    }
}
