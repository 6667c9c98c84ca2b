using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>What the user should know about a layout on leftovers.</summary>
internal static class FitNotes
{
    /// <summary>The rules of matching that would hold on cloth to buy; on leftovers, where nobody has said how the print lies, none does.</summary>
    public static ImmutableArray<string> NotKept(Job job, Cloth cloth)
    {
        HashSet<string> pieces = [.. job.Pieces.Where(piece => piece.Cloth == cloth.Name).Select(piece => piece.Piece.Name)];
        return cloth.Repeat is null && cloth.Border is null ? [] : [.. job.Matches.Where(rule => pieces.Contains(rule.First.Piece)).Select(rule => rule.Text)];
    }

    /// <summary>The notes on the pieces, as for cloth to buy, and one on the print.</summary>
    public static ImmutableArray<Problem> Of(Job job, Cloth cloth, LayTask task)
    {
        ImmutableArray<string> rules = NotKept(job, cloth);
        (string what, string hint) = FitWords.NotKept(cloth.Name, rules);
        IEnumerable<Problem> print = rules.IsEmpty ? [] : [new Problem(Severity.Note, new Place(job.Source, 0, 0, "cloths." + cloth.Name), what, hint)];
        return [.. print, .. LayNotes.For(cloth, task.Demands).Select(note => new Problem(Severity.Note, PlaceOf(job, cloth, note.Piece), note.What, note.Hint))];
    }

    private static Place PlaceOf(Job job, Cloth cloth, string piece) =>
        job.Pieces.First(candidate => candidate.Piece.Name == piece && candidate.Cloth == cloth.Name).Where;
}
