using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>Where the bars and borders of a printed cloth lie on a lay of it.</summary>
/// <remarks>
/// Two layers can be matched across only where their bars lie on each other: the fold lies on a bar or in the middle between two, and the print is even.
/// Along the cloth the lay may begin anywhere in the repeat, so only the search says where those bars lie.
/// </remarks>
public sealed class LayPrint
{
    /// <summary>Bars of two layers that miss each other by no more than this lie on each other; pays for halves of odd widths.</summary>
    private const long SlackMicrometers = 20;

    private LayPrint(Cloth cloth, LaySurface surface)
    {
        Cloth = cloth;
        Surface = surface;
        Bars = [.. Enumerable.Range(0, surface.Bands.Length).Select(BarIn)];
        Borders = [.. Enumerable.Range(0, surface.Bands.Length).Select(BordersIn)];
    }

    /// <summary>The cloth.</summary>
    public Cloth Cloth { get; }

    /// <summary>How it is spread.</summary>
    public LaySurface Surface { get; }

    /// <summary>For each band y of the middle of a lengthwise bar, the same on every layer; <c>null</c> where there is none such.</summary>
    public ImmutableArray<Length?> Bars { get; }

    /// <summary>For each band every y at which, on every layer, a border begins.</summary>
    public ImmutableArray<ImmutableArray<Length>> Borders { get; }

    /// <summary>Where the print of a cloth lies.</summary>
    /// <param name="cloth">The cloth; with or without a print.</param>
    /// <param name="surface">How it is spread.</param>
    public static LayPrint Of(Cloth cloth, LaySurface surface) => new(cloth, surface);

    /// <summary>From the near usable edge to the middle of a lengthwise bar; of a tube without a measure a bar lies on its fold.</summary>
    public static Length FirstBarOf(Cloth cloth) => cloth.Repeat?.FirstBar is { } given
        ? given - cloth.Selvage
        : cloth.Lay == LayForm.Tubular ? Length.Zero : cloth.UsableWidth / 2;

    /// <summary>The nearest way to lay the fold so that the layers match: a place of the fold, from the near usable edge, at or below the middle, on a bar or between two.</summary>
    /// <param name="cloth">A cloth with a repeat across.</param>
    /// <param name="atMost">The fold lies there or nearer to the edge.</param>
    public static Length FoldOnBar(Cloth cloth, Length atMost)
    {
        long half = cloth.Repeat!.Across!.Value.Micrometers / 2;
        return Length.FromMicrometers(atMost.Micrometers - Modulo(atMost.Micrometers - FirstBarOf(cloth).Micrometers, half));
    }

    /// <summary>The layers of the flat cloth in a band of a lay, the lower one, right side up, first.</summary>
    public static ImmutableArray<LayLayer> LayersIn(LaySurface surface, int band)
    {
        LaySurface section = (surface.Form, band) switch
        {
            (LayForm.Mixed, 0) => LaySurface.Folded(surface.UsableWidth),
            (LayForm.Mixed, _) => LaySurface.Open(surface.UsableWidth),
            _ => surface,
        };
        long middle = (surface.Bands[band].Low.Micrometers + surface.Bands[band].High.Micrometers) / 2;
        return [.. section.Layers.Where(layer => IsWithin(middle, layer))];
    }

    private static bool IsWithin(long y, LayLayer layer)
    {
        (long from, long to) = (layer.OnLay(layer.From).Micrometers, layer.OnLay(layer.To).Micrometers);
        return y > Math.Min(from, to) && y < Math.Max(from, to);
    }

    /// <summary>The remainder of a floor division, zero or more.</summary>
    public static long Modulo(long value, long divisor) => ((value % divisor) + divisor) % divisor;

    private Length? BarIn(int band)
    {
        if (Cloth.Repeat is not { Across: { } across } repeat)
            return null;
        ImmutableArray<LayLayer> layers = LayersIn(Surface, band);
        if (repeat.Balance == PrintBalance.Uneven && layers.Any(layer => layer.Sign < 0))
            return null;
        long period = across.Micrometers;
        long[] places = [.. layers.Select(layer => Modulo(layer.OnLay(FirstBarOf(Cloth)).Micrometers, period))];
        bool agree = places.All(place => Math.Min(Modulo(place - places[0], period), Modulo(places[0] - place, period)) <= SlackMicrometers);
        return agree ? Length.FromMicrometers(places[0]) : null;
    }

    private ImmutableArray<Length> BordersIn(int band)
    {
        if (Cloth.Border is not { } border)
            return [];
        Length from = border.From - Cloth.Selvage;
        Length far = Surface.UsableWidth - from;
        Length[] printed = border.Edge switch { BorderEdge.Near => [from], BorderEdge.Far => [far], _ => [from, far] };
        ImmutableArray<LayLayer> layers = LayersIn(Surface, band);
        return
        [
            .. printed.Where(place => place >= layers[0].From && place <= layers[0].To).Select(place => layers[0].OnLay(place))
                .Where(y => layers.All(layer => printed.Any(place => Math.Abs((layer.OnLay(place) - y).Micrometers) <= SlackMicrometers))),
        ];
    }
}
