using System.Collections.Immutable;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>A point of an outline under alteration.</summary>
/// <param name="Place">Where.</param>
/// <param name="Notches">Names of the notches that stand there.</param>
/// <param name="Tag">Name of a cut that begins or ends there; mostly empty.</param>
/// <param name="IsAdded">Whether it was put in for a notch or a cut and may go again where the outline is straight.</param>
internal readonly record struct PaperPoint(Vector Place, ImmutableArray<string> Notches, string Tag, bool IsAdded)
{
    public static PaperPoint At(Vector place) => new(place, [], "", false);

    public static PaperPoint AddedAt(Vector place) => new(place, [], "", true);

    /// <summary>The same place for the second half of a cut, where no notch is doubled.</summary>
    public PaperPoint Bare => this with { Notches = [], Tag = "" };
}
