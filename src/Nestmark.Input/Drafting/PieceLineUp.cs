using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input.Seams;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;

namespace Nestmark.Input.Drafting;

/// <summary>Makes the pieces of a job, each after those that it is measured along, whatever their order in the file.</summary>
internal sealed class PieceLineUp(JobDraft draft, Func<DraftedPiece, JobPiece?> make)
{
    private const int LongestChain = 50;
    private const double LongestMillimeters = 500_000;

    private readonly ILookup<string, DraftedPiece> _drafted = draft.Pieces.ToLookup(piece => piece.Draft.Name, StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<JobPiece>> _made = new(StringComparer.Ordinal);
    private readonly List<string> _underway = [];

    /// <summary>All pieces in the order of the file; those with errors are left out.</summary>
    public ImmutableArray<JobPiece> All() => [.. draft.Pieces.Select(piece => piece.Draft.Name).Distinct().SelectMany(name => Of(name))];

    private ImmutableArray<JobPiece> Of(string name)
    {
        if (_made.TryGetValue(name, out ImmutableArray<JobPiece> made))
            return made;
        _underway.Add(name);
        made = [.. _drafted[name].SelectMany(piece => piece.Recipe is null ? [make(piece)] : Drafted(piece, piece.Recipe)).OfType<JobPiece>()];
        _underway.RemoveAt(_underway.Count - 1);
        _made[name] = made;
        return made;
    }

    private ImmutableArray<JobPiece?> Drafted(DraftedPiece piece, Recipe recipe)
    {
        if (SourceFault(piece, recipe) is { } fault)
        {
            Report(recipe, Severity.Error, fault);
            return [];
        }
        Cloth? cloth = draft.Cloths.FirstOrDefault(candidate => piece.Cloth.Length == 0 || candidate.Name == piece.Cloth);
        if (cloth is null || cloth.UsableWidth <= Length.Zero)
            return [];
        ImmutableArray<JobPiece> sources = [.. recipe.Pieces.Distinct().SelectMany(name => Of(name))];
        bool bySize = sources.Any(source => source.Piece.Size.Length > 0) || recipe.Measures.Any(measure => measure.IsBySize);
        string[] sizes = bySize ? [.. draft.Sizes.Select(size => size.Size)] : [""];
        return [.. sizes.Select(size => InSize(piece, recipe, cloth, size, sources))];
    }

    /// <summary>What is wrong with the pieces that a recipe is measured along, or <c>null</c>. They are made on the way.</summary>
    private Fault? SourceFault(DraftedPiece piece, Recipe recipe)
    {
        foreach (string name in recipe.Pieces.Distinct())
        {
            if (!draft.PieceNames.Contains(name))
                return SeamFaults.UnknownPiece(name, draft.PieceNames);
            int start = _underway.IndexOf(name);
            if (start >= 0)
                return DraftingFaults.Circle(_underway.Skip(start));
            if (_underway.Count >= LongestChain)
                return DraftingFaults.ChainTooLong();
            if (Of(name).IsEmpty)
                return DraftingFaults.NotMeasured(piece.Draft.Name, name);
        }
        string[] sizes = [.. draft.Sizes.Select(size => size.Size)];
        string? unknown = recipe.Measures.SelectMany(measure => measure.BySize).Select(entry => entry.Size).FirstOrDefault(size => size.Length > 0 && !sizes.Contains(size));
        return unknown is null ? null : DraftingFaults.SizeUnknown(unknown, sizes);
    }

    private JobPiece? InSize(DraftedPiece piece, Recipe recipe, Cloth cloth, string size, ImmutableArray<JobPiece> sources)
    {
        string title = size.Length == 0 ? piece.Draft.Name : piece.Draft.Name + " " + size;
        Dictionary<Measure, Length> lengths = [];
        foreach (Measure measure in recipe.Measures)
        {
            Reading<Length> length = LengthOf(measure, size, title, Find);
            if (length.Fault is not null)
            {
                draft.Context.Error(measure.Node, measure.Item, length.Fault);
                return null;
            }
            lengths[measure] = length.Value;
        }
        DraftingCloth draftingCloth = new(cloth.UsableWidth, LayersOf(cloth), length => LengthWords.Tape(length, draft.Context.System));
        PieceDraft pattern = piece.Draft with { Size = size };
        DraftingResult result = recipe.Draft(new RecipeSite(pattern, draftingCloth, Find, lengths));
        bool isGood = result.Shape is not null;
        Report(recipe, isGood ? Severity.Note : Severity.Error, new Fault($"{title}: {result.Shape?.Said ?? result.What}", result.Hint));
        return result.Shape is { } shape ? make(piece with { Draft = With(pattern, shape), Recipe = null }) : null;

        Piece? Find(string name) => sources.FirstOrDefault(source => source.Piece.Name == name && (source.Piece.Size.Length == 0 || source.Piece.Size == size))?.Piece;
    }

    /// <summary>Two where every place lies beside a lengthwise fold; where single layers can be had, or a fold runs across, pieces are drafted whole.</summary>
    private static int LayersOf(Cloth cloth) => cloth.Lay is LayForm.Folded or LayForm.DoubleFold or LayForm.Tubular ? 2 : 1;

    private static Reading<Length> LengthOf(Measure measure, string size, string title, Func<string, Piece?> find)
    {
        ImmutableArray<SeamTerm> terms = measure.BySize.FirstOrDefault(entry => entry.Size.Length == 0 || entry.Size == size).Terms;
        if (terms.IsDefault)
            return new(default, DraftingFaults.SizeMissing(size));
        foreach (SeamTerm term in terms.Where(term => term.IsRun))
        {
            Fault? fault = find(term.Piece) is { } piece ? SeamFinding.RunFault(piece, term) : SeamFaults.NoSize(term.Piece, size);
            if (fault is not null)
                return new(default, fault);
        }
        double millimeters = SideWalk.Of(terms, find)!.LengthMillimeters;
        return millimeters is > 0.5 and <= LongestMillimeters ? new(Length.FromMillimeters(millimeters), null) : new(default, DraftingFaults.OutOfRange(title));
    }

    private static PieceDraft With(PieceDraft pattern, DraftedShape shape) => pattern with
    {
        Outline = shape.Outline,
        Cut = shape.Cut,
        FoldLine = shape.FoldLine,
        FoldEdge = "",
        Edges = [.. shape.Edges.Where(edge => !pattern.Edges.Any(own => own.From == edge.From && own.To == edge.To)), .. pattern.Edges],
        Notches = shape.Notches,
        Lines = shape.Lines,
        Grain = shape.Grain ?? pattern.Grain,
    };

    private void Report(Recipe recipe, Severity severity, Fault fault) =>
        draft.Context.Problems.Add(severity, draft.Context.PlaceOf(recipe.Shape.Value, recipe.Item), fault);
}
