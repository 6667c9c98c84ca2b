using System.Collections.Immutable;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Alterations;
using Nestmark.Yardage;

namespace Nestmark.Input.Alterations;

/// <summary>The pieces of a job: read, graded, altered in the order of the file.</summary>
internal static class AlteredPieces
{
    /// <summary>The drafts as they are to be made.</summary>
    /// <param name="job">The whole file; takes the keys alter and grade.</param>
    /// <param name="context">Units and problems.</param>
    /// <param name="sizes">The sizes that are cut.</param>
    /// <param name="read">Reads the pieces for some sizes.</param>
    /// <param name="history">Gets the drawn pieces before the first alteration and after each.</param>
    public static ImmutableArray<DraftedPiece> Of(
        MapReader job, JobContext context, ImmutableArray<SizeCount> sizes, Func<ImmutableArray<SizeCount>, ImmutableArray<DraftedPiece>> read,
        out AlterHistory history)
    {
        ImmutableArray<string> cut = [.. sizes.Select(count => count.Size)];
        ImmutableArray<string> others = [.. BlendVerb.SizesTakenFrom(job).Except(cut)];
        ImmutableArray<(TextNode Piece, GradeTable Table)> tables = GradeReader.Read(job, context);
        ImmutableArray<DraftedPiece> all = read(sizes);
        ImmutableArray<DraftedPiece> pieces = GradedPieces.Of(Drawn(all), tables, cut, context);
        ImmutableArray<DraftedPiece> otherSizes = others.IsEmpty
            ? []
            : GradedPieces.Of(Drawn(read([.. others.Select(size => new SizeCount(size, 1))])), tables, others, context);
        AlterationRun run = new(pieces, otherSizes, context);
        foreach (AlterStep step in AlterReader.Read(job, context, cut))
            run.Make(step);
        history = new AlterHistory(run.Start, [.. run.Stages]);
        return [.. run.Pieces.Concat(all.Where(piece => piece.Recipe is not null)).OrderBy(piece => piece.Keys.Name.Line).ThenBy(piece => piece.Keys.Name.Column)];
    }

    /// <summary>The pieces with a shape of their own; those drafted from measures have none before the others are made.</summary>
    private static ImmutableArray<DraftedPiece> Drawn(ImmutableArray<DraftedPiece> pieces) => [.. pieces.Where(piece => piece.Recipe is null)];
}
