using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>Both sides of all pairs of shapes, each made when first asked for: most pairs of a long lay never come near each other. Safe for several threads.</summary>
internal sealed class PairSides(SearchShape[] shapes, PairFits fits)
{
    private readonly PairSide[] _sides = new PairSide[shapes.Length * shapes.Length];
    private readonly double _meanSize = SearchShape.MeanSizeMicrometers(shapes);
    private readonly Lock _filling = new();

    /// <summary>How severely a moving shape overlaps a still one.</summary>
    public ref readonly PairSide Of(int still, int moving)
    {
        ref PairSide slot = ref _sides[moving * shapes.Length + still];
        if (!PairSide.IsFilled(ref slot))
            Fill(ref slot, still, moving);
        return ref slot;
    }

    /// <summary>The no-fit polygon of a still and a moving shape.</summary>
    public SeenFit FitOf(int still, int moving) => fits.Of(still, moving);

    /// <summary>Overlaps of larger shapes count more, since they are the hardest to remove.</summary>
    private void Fill(ref PairSide slot, int still, int moving)
    {
        double size = Math.Sqrt(shapes[still].SizeMicrometers * shapes[moving].SizeMicrometers) / _meanSize;
        (OverlapMap map, Mirroring seen) = fits.MapOf(still, moving);
        PairSide side = new(map, seen, size);
        lock (_filling)
        {
            if (!PairSide.IsFilled(ref slot))
                PairSide.Fill(ref slot, side);
        }
    }
}
