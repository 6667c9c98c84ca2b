using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>What the user should know about a plan: every such sentence that is not a rule of placing.</summary>
internal static class PlanNotes
{
    /// <summary>The notes of one cloth.</summary>
    /// <param name="job">The job.</param>
    /// <param name="work">What is cut from the cloth.</param>
    /// <param name="option">How it is spread.</param>
    public static IEnumerable<Problem> Of(Job job, ClothWork work, LayOption option)
    {
        if (work.Orders.IsEmpty)
        {
            Place where = new(job.Source, 0, 0, "cloths." + work.Cloth.Name);
            yield return new Problem(Severity.Note, where, $"No piece is cut from {work.Cloth.Name}.", "");
        }
        foreach (LayNote note in LayNotes.For(work.Cloth, option.Demands))
            yield return new Problem(Severity.Note, PlaceOf(job, work, note.Piece), note.What, note.Hint);
    }

    /// <summary>The pieces that cannot lie on their cloth, in the way it is first thought to be spread.</summary>
    public static IEnumerable<Problem> Refusals(Job job, ClothWork work) => work.Options[0].Impossible
        .Select(unplaced => new Problem(Severity.Error, PlaceOf(job, work, unplaced.Piece), unplaced.Reason, ""));

    private static Place PlaceOf(Job job, ClothWork work, string piece) =>
        job.Pieces.First(candidate => candidate.Piece.Name == piece && candidate.Cloth == work.Cloth.Name).Where;
}
