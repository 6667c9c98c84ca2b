using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations;

/// <summary>The offsets of one piece's corners over the sizes, counted from the base size.</summary>
/// <param name="Sizes">All sizes in their order, small to large; the base among them.</param>
/// <param name="Base">The size as drawn; its offsets are zero.</param>
/// <param name="Corners">Corner letters with the offsets that are given, by size.</param>
/// <param name="Between">What sizes without offsets get.</param>
public sealed record GradeTable(
    ImmutableArray<string> Sizes, string Base, ImmutableArray<(string Corner, ImmutableDictionary<string, CornerOffset> Offsets)> Corners, GradeBetween Between)
{
    /// <summary>The offset of a corner in a size; <c>null</c> where it is not given and may not or cannot be found between two that are.</summary>
    /// <remarks>Between two sizes the steps are even: a straight line over the places of the sizes in their order.</remarks>
    /// <param name="corner">A corner; one that the table does not name has no offset in any size.</param>
    /// <param name="size">One of the sizes.</param>
    public CornerOffset? OffsetOf(string corner, string size)
    {
        ImmutableDictionary<string, CornerOffset>? offsets = Corners.FirstOrDefault(entry => entry.Corner == corner).Offsets;
        if (size == Base || offsets is null)
            return default(CornerOffset);
        if (offsets.TryGetValue(size, out CornerOffset given))
            return given;
        if (Between == GradeBetween.Given)
            return null;
        int at = Sizes.IndexOf(size);
        int below = Enumerable.Range(0, Math.Max(0, at)).Reverse().FirstOrDefault(i => IsKnown(i, offsets), -1);
        int above = Enumerable.Range(at + 1, Math.Max(0, Sizes.Length - at - 1)).FirstOrDefault(i => IsKnown(i, offsets), -1);
        if (at < 0 || below < 0 || above < 0)
            return null;
        CornerOffset lower = Known(below, offsets);
        CornerOffset upper = Known(above, offsets);
        double share = (at - below) / (double)(above - below);
        return new CornerOffset(Mixed(lower.Along, upper.Along, share), Mixed(lower.Across, upper.Across, share));
    }

    private bool IsKnown(int index, ImmutableDictionary<string, CornerOffset> offsets) => Sizes[index] == Base || offsets.ContainsKey(Sizes[index]);

    private CornerOffset Known(int index, ImmutableDictionary<string, CornerOffset> offsets) => Sizes[index] == Base ? default : offsets[Sizes[index]];

    private static Length Mixed(Length lower, Length upper, double share) =>
        Length.FromMillimeters(lower.TotalMillimeters + share * (upper.TotalMillimeters - lower.TotalMillimeters));
}
