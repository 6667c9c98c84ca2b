using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Pieces.Drafting;
using Nestmark.Pieces.Seams;

namespace Nestmark.Input.Drafting;

/// <summary>What a recipe finds when its turn comes: other pieces in its size, its cloth, the keys of its piece.</summary>
/// <param name="Pattern">The piece's keys, without a shape.</param>
/// <param name="Cloth">The cloth it is cut from.</param>
/// <param name="Find">A piece by name in this size; <c>null</c> when it is not there.</param>
/// <param name="Lengths">The measures in this size.</param>
internal sealed record RecipeSite(PieceDraft Pattern, DraftingCloth Cloth, Func<string, Piece?> Find, IReadOnlyDictionary<Measure, Length> Lengths)
{
    /// <summary>The length of a measure.</summary>
    public Length this[Measure measure] => Lengths[measure];

    /// <summary>Where the parts of a measure end, counted from its start; the last one left out.</summary>
    public IEnumerable<Length> Joins(Measure measure, string size)
    {
        double walked = 0;
        foreach (SeamTerm term in measure.BySize.First(entry => entry.Size.Length == 0 || entry.Size == size).Terms)
        {
            double length = term.IsRun ? EdgeRun.Find(Find(term.Piece)!, term.Corners)!.LengthMillimeters : term.Plain.TotalMillimeters;
            for (int i = 0; i < term.Times; i++)
            {
                if (walked > 0)
                    yield return Length.FromMillimeters(walked);
                walked += length;
            }
        }
    }
}
