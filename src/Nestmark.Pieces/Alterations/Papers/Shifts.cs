using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Alterations by a shift along and across the grain; the largest amount that works is one in the same direction.</summary>
internal static class Shifts
{
    public static AlterationResult Try(PieceDraft draft, Length along, Length across, Func<Paper, Vector, PaperOutcome> make)
    {
        Vector asked = new(along.Micrometers, across.Micrometers);
        return Trying.With(draft, Length.FromMicrometers((long)Math.Round(asked.Norm)), (paper, amount) =>
        {
            Vector shift = asked.Norm == 0 ? default : amount.Micrometers / asked.Norm * asked;
            return make(paper, shift.X * paper.Along + shift.Y * paper.Across);
        });
    }
}
