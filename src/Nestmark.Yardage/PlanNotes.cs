using System.Collections.Immutable;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>What the user should know about a plan: every such sentence that is not a rule of placing.</summary>
internal static class PlanNotes
{
    /// <summary>The notes of all cloths, in the order of the job.</summary>
    public static ImmutableArray<Problem> Of(Job job, IEnumerable<ClothWork> works) => [.. works.SelectMany(work => Of(job, work))];

    /// <summary>The pieces that cannot lie on their cloth.</summary>
    public static IEnumerable<Problem> Refusals(Job job, IEnumerable<ClothWork> works) => works
        .SelectMany(work => work.Task.Impossible)
        .Select(unplaced => new Problem(Severity.Error, PlaceOf(job, unplaced.Piece), unplaced.Reason, ""));

    private static IEnumerable<Problem> Of(Job job, ClothWork work)
    {
        if (work.Orders.IsEmpty)
        {
            Place where = new(job.Source, 0, 0, "cloths." + work.Cloth.Name);
            yield return new Problem(Severity.Note, where, $"No piece is cut from {work.Cloth.Name}.", "");
        }
        foreach (LayNote note in LayNotes.For(work.Cloth, LaidOrders(work)))
            yield return new Problem(Severity.Note, PlaceOf(job, note.Piece), note.What, note.Hint);
    }

    private static IEnumerable<PieceOrder> LaidOrders(ClothWork work) => work.Orders
        .Where(order => !work.Task.Impossible.Any(refused => refused.Piece == order.Piece.Name && refused.Size == order.Size));

    private static Place PlaceOf(Job job, string piece) => job.Pieces.First(candidate => candidate.Piece.Name == piece).Where;
}
