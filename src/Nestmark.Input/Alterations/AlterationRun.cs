using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces;
using Nestmark.Pieces.Alterations;
using Nestmark.Yardage;

namespace Nestmark.Input.Alterations;

/// <summary>The pieces of a job while they are altered, one alteration after the other. The drafts as read stay as they are.</summary>
internal sealed class AlterationRun(ImmutableArray<DraftedPiece> pieces, ImmutableArray<DraftedPiece> otherSizes, JobContext context)
{
    private readonly HashSet<(string Name, string Size)> _broken = [];

    /// <summary>The pieces as they stand now, in the order of the file.</summary>
    public List<DraftedPiece> Pieces { get; } = [.. pieces];

    public JobContext Context => context;

    /// <summary>The pieces before the first alteration.</summary>
    public ImmutableArray<DraftedPiece> Start => pieces;

    /// <summary>What the alterations made so far led to, one after the other; those that changed nothing are left out.</summary>
    public List<AlterStage> Stages { get; } = [];

    /// <summary>Makes one alteration.</summary>
    public void Make(AlterStep step)
    {
        ImmutableArray<DraftedPiece> before = [.. Pieces];
        step.Make(this);
        if (AlterStage.Of(before, [.. Pieces]) is { } stage)
            Stages.Add(stage);
    }

    /// <summary>A piece as read in a size, cut in it or not, for blending; <c>null</c> where it is not there or cannot be made.</summary>
    public DraftedPiece? InSize(string name, string size) => pieces.Concat(otherSizes)
        .FirstOrDefault(piece => piece.Draft.Name == name && piece.Draft.Size == size) is { } found ? Sound(found) : null;

    /// <summary>Makes an alteration on every size of a piece that it asks for.</summary>
    public void Each(TextNode name, AlterAsk ask) => Each(name, ask, ask.Apply);

    /// <summary>The pieces of a name in the sizes asked for; reports where there are none.</summary>
    public ImmutableArray<DraftedPiece> Find(TextNode name, AlterAsk ask)
    {
        DraftedPiece[] named = [.. Pieces.Where(piece => piece.Draft.Name == name.Text)];
        ImmutableArray<DraftedPiece> found = [.. named.Where(piece => ask.Sizes.IsEmpty || ask.Sizes.Contains(piece.Draft.Size))];
        if (named.Length == 0)
            context.Error(name, ask.Item, AlterFaults.UnknownPiece(name.Text, [.. Pieces.Select(piece => piece.Draft.Name).Distinct()]));
        else if (found.IsEmpty)
            context.Error(name, ask.Item, AlterFaults.NotInSizes(name.Text, ask.Sizes));
        return found;
    }

    /// <summary>A piece with its form before; <c>null</c> where it cannot be made into a piece even so, which is reported when it is made.</summary>
    public DraftedPiece? Sound(DraftedPiece piece)
    {
        if (piece.Before is not null)
            return piece;
        if (_broken.Contains((piece.Draft.Name, piece.Draft.Size)))
            return null;
        PieceDraft draft = piece.Draft;
        if (PieceMaking.Make(draft with { Edges = [] }).Piece is { } plain)
        {
            string[] edges = [.. plain.Edges.Select(edge => edge.Name)];
            PieceDraft before = Lettering.Of(draft with { Edges = [.. draft.Edges.Where(edge => edges.Contains(edge.From + "-" + edge.To))] });
            if (PieceMaking.Make(before).Piece is { } made)
                return piece with { Before = made, BeforeDraft = before };
        }
        _broken.Add((draft.Name, draft.Size));
        return null;
    }

    /// <summary>A piece after a good result, with the change in words and measures.</summary>
    public DraftedPiece Changed(DraftedPiece sound, AlterAsk ask, AlterationResult result)
    {
        string title = sound.Draft.Name;
        foreach (string note in result.Notes.Append(ask.Note(sound.Draft)).Where(note => note.Length > 0))
            context.Note(ask.Node, ask.Item, new Fault($"{title}: {note}", ""));
        return sound with { Draft = result.Draft!, Changes = sound.Changes.Add(ChangeOf(sound.Draft, result.Draft!, ask)) };
    }

    /// <summary>Reports why an alteration cannot be made.</summary>
    public void Refuse(DraftedPiece piece, AlterAsk ask, AlterationFault fault)
    {
        string title = piece.Draft.Size.Length == 0 ? piece.Draft.Name : piece.Draft.Name + " " + piece.Draft.Size;
        string largest = fault.Largest is { } length ? Floor(length) : "";
        context.Error(ask.Node, ask.Item, AlterFaults.Refused(title, ask.Done, fault, largest));
    }

    private void Each(TextNode name, AlterAsk ask, Func<PieceDraft, AlterationResult> apply)
    {
        foreach (DraftedPiece piece in Find(name, ask))
        {
            if (Sound(piece) is not { } sound)
                continue;
            AlterationResult result = apply(sound.Draft);
            if (result.Fault is { } fault)
                Refuse(piece, ask, fault);
            else
                Pieces[Pieces.IndexOf(piece)] = Changed(sound, ask, result);
        }
    }

    /// <summary>Rounded down to what a tape shows, so that what is named does work.</summary>
    private string Floor(Length length)
    {
        long step = context.System == MeasureSystem.Imperial ? Length.MicrometersPerInch / 16 : Length.MicrometersPerMillimeter;
        if (length.Micrometers < step)
            return FormattableString.Invariant($"{length.TotalMillimeters:0.##} mm");
        decimal exactStep = context.System == MeasureSystem.Imperial ? Length.MicrometersPerInch / 16m : step;
        return LengthWords.Tape(Length.FromMicrometers((long)(Math.Floor(length.Micrometers / exactStep) * exactStep)), context.System);
    }

    private PieceChange ChangeOf(PieceDraft before, PieceDraft after, AlterAsk ask)
    {
        DraftMeasures was = DraftMeasures.Of(before);
        DraftMeasures now = DraftMeasures.Of(after);
        List<EdgeChange> edges = [];
        foreach ((string name, Length length) in now.Edges)
        {
            Length? old = was.Edges.Any(edge => edge.Name == name) ? was.Edges.First(edge => edge.Name == name).Length : null;
            if (old is null || Math.Abs(old.Value.Micrometers - length.Micrometers) > 5)
                edges.Add(new EdgeChange(name, old, length));
        }
        edges.AddRange(was.Edges.Where(edge => now.Edges.All(other => other.Name != edge.Name)).Select(edge => new EdgeChange(edge.Name, edge.Length, null)));
        string what = char.ToUpperInvariant(ask.Done[0]) + ask.Done[1..] + ".";
        return new PieceChange(what, was.AreaSquareMillimeters, now.AreaSquareMillimeters, [.. edges], context.PlaceOf(ask.Node, ask.Item));
    }
}
