using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>The cloth as spread: a strip that runs along x, y from the fold (or the near selvage) across. Bands say how many layers lie where, folds where they are.</summary>
/// <remarks>Compared by reference. Every form is bands and folds and nothing else, so that no form needs rules of its own elsewhere.</remarks>
public sealed class LaySurface
{
    private LaySurface(
        LayForm form, Length usableWidth, Length depth, ImmutableArray<LayBand> bands, ImmutableArray<LayFold> folds, ImmutableArray<LayLayer> layers)
    {
        Layers = layers;
        Form = form;
        UsableWidth = usableWidth;
        Depth = depth;
        Bands = bands;
        Folds = folds;
    }

    /// <summary>How it is spread; never <see cref="LayForm.Best"/>.</summary>
    public LayForm Form { get; }

    /// <summary>Usable width of the cloth, all layers of it side by side; of a tube the whole way round.</summary>
    public Length UsableWidth { get; }

    /// <summary>Extent of the lay along y, from 0.</summary>
    public Length Depth { get; }

    /// <summary>Its bands; they do not overlap. One or more.</summary>
    public ImmutableArray<LayBand> Bands { get; }

    /// <summary>Its folds.</summary>
    public ImmutableArray<LayFold> Folds { get; }

    /// <summary>Where every strip of the flat cloth lies; empty for a mixed lay, which has two sections.</summary>
    public ImmutableArray<LayLayer> Layers { get; }

    /// <summary>Off-color strips, along edges of bands.</summary>
    public ImmutableArray<ShadedStrip> Shades { get; private init; } = [];

    /// <summary>Whether there is a fold along the cloth at y = 0.</summary>
    public bool HasNearFold => Folds.Any(fold => fold.Side == FoldSide.Near);

    /// <summary>Whether there is any fold.</summary>
    public bool HasFold => !Folds.IsEmpty;

    /// <summary>Whether a placement somewhere cuts two layers.</summary>
    public bool HasTwoLayers => Bands.Any(band => band.Layers == 2);

    /// <summary>Whether a placement somewhere cuts one layer.</summary>
    public bool HasOneLayer => Bands.Any(band => band.Layers == 1);

    /// <summary>Lengths of cloth in one length of the lay: 2 where cut ends lie together, else 1.</summary>
    public int LengthsOfCloth => Form is LayForm.CrosswiseFold or LayForm.CrosswiseTurned ? 2 : 1;

    /// <summary>One layer.</summary>
    /// <exception cref="ArgumentException">No width.</exception>
    public static LaySurface Open(Length usableWidth) =>
        new(LayForm.Open, Guarded(usableWidth), usableWidth, [LayBand.Along(Length.Zero, usableWidth, 1)], [], [new(Length.Zero, usableWidth, 1, Length.Zero)]);

    /// <summary>Folded lengthwise in half.</summary>
    /// <exception cref="ArgumentException">No width.</exception>
    public static LaySurface Folded(Length usableWidth)
    {
        Length half = Guarded(usableWidth) / 2;
        return new(
            LayForm.Folded, usableWidth, half, [LayBand.Along(Length.Zero, half, 2)], [new(FoldSide.Near, Length.Zero, 0)],
            [new(half, usableWidth, 1, -half), new(Length.Zero, half, -1, half)]);
    }

    /// <summary>Folded over by a depth; the near selvage lies at that depth and the far one at the usable width less it.</summary>
    /// <exception cref="ArgumentException">No width, or a depth that is not above zero and below half the width.</exception>
    public static LaySurface PartialFold(Length usableWidth, Length foldDepth)
    {
        if (foldDepth <= Length.Zero || foldDepth * 2 >= Guarded(usableWidth))
            throw new ArgumentException("A fold's depth must lie above zero and below half the usable width.", nameof(foldDepth));
        Length depth = usableWidth - foldDepth;
        return new(
            LayForm.PartialFold, usableWidth, depth,
            [LayBand.Along(Length.Zero, foldDepth, 2), LayBand.Along(foldDepth, depth, 1)], [new(FoldSide.Near, Length.Zero, 0)],
            [new(foldDepth, usableWidth, 1, -foldDepth), new(Length.Zero, foldDepth, -1, foldDepth)]);
    }

    /// <summary>Both selvages folded in to the middle.</summary>
    /// <exception cref="ArgumentException">No width.</exception>
    public static LaySurface DoubleFold(Length usableWidth)
    {
        Length depth = Guarded(usableWidth) / 2;
        Length middle = usableWidth / 4;
        return new(
            LayForm.DoubleFold, usableWidth, depth,
            [LayBand.Along(Length.Zero, middle, 2), LayBand.Along(middle, depth, 2)],
            [new(FoldSide.Near, Length.Zero, 0), new(FoldSide.Far, depth, 1)],
            [
                new(middle, usableWidth - middle, 1, -middle), new(Length.Zero, middle, -1, middle),
                new(usableWidth - middle, usableWidth, -1, usableWidth + middle),
            ]);
    }

    /// <summary>Folded across, cut ends together.</summary>
    /// <exception cref="ArgumentException">No width.</exception>
    public static LaySurface CrosswiseFold(Length usableWidth) => new(
        LayForm.CrosswiseFold, Guarded(usableWidth), usableWidth,
        [LayBand.Along(Length.Zero, usableWidth, 2)], [new(FoldSide.Begin, Length.Zero, 0)], [new(Length.Zero, usableWidth, 1, Length.Zero)]);

    /// <summary>Two lengths on each other, right sides together, nap alike.</summary>
    /// <exception cref="ArgumentException">No width.</exception>
    public static LaySurface CrosswiseTurned(Length usableWidth) => new(
        LayForm.CrosswiseTurned, Guarded(usableWidth), usableWidth, [LayBand.Along(Length.Zero, usableWidth, 2)], [],
        [new(Length.Zero, usableWidth, 1, Length.Zero), new(Length.Zero, usableWidth, -1, usableWidth)]);

    /// <summary>A tube as it lies, folds at both edges.</summary>
    /// <param name="flatWidth">From fold to fold.</param>
    /// <exception cref="ArgumentException">No width.</exception>
    public static LaySurface Tubular(Length flatWidth) => new(
        LayForm.Tubular, Guarded(flatWidth) * 2, flatWidth,
        [LayBand.Along(Length.Zero, flatWidth, 2)], [new(FoldSide.Near, Length.Zero, 0), new(FoldSide.Far, flatWidth, 0)],
        [new(Length.Zero, flatWidth, 1, Length.Zero), new(flatWidth, flatWidth * 2, -1, flatWidth * 2)]);

    /// <summary>Leftovers side by side along x, one layer; where there is no cloth between them is for obstacles to say.</summary>
    /// <param name="depth">Of the deepest leftover, above zero.</param>
    /// <exception cref="ArgumentException">No depth.</exception>
    public static LaySurface Remnants(Length depth) => new(
        LayForm.Remnants, Guarded(depth), depth, [LayBand.Along(Length.Zero, depth, 1)], [], [new(Length.Zero, depth, 1, Length.Zero)]);

    /// <summary>A folded section of some length, then an open one as far as the lay goes.</summary>
    /// <exception cref="ArgumentException">No width, or a length below zero.</exception>
    public static LaySurface Mixed(Length usableWidth, Length foldedLength)
    {
        if (foldedLength < Length.Zero)
            throw new ArgumentException("The folded section must not be shorter than nothing.", nameof(foldedLength));
        return new(
            LayForm.Mixed, Guarded(usableWidth), usableWidth,
            [new(Length.Zero, usableWidth / 2, 2, Length.Zero, foldedLength), new(Length.Zero, usableWidth, 1, foldedLength, null)],
            [new(FoldSide.Near, Length.Zero, 0)], []);
    }

    /// <summary>The surface a cloth gives when spread as it says.</summary>
    /// <exception cref="ArgumentException">Nothing of its width is left for pieces, or its form needs a choice: best, mixed, or a partial fold without a depth.</exception>
    public static LaySurface Of(Cloth cloth) => Of(cloth, cloth.Lay);

    /// <summary>The surface a cloth gives when spread in a form.</summary>
    /// <exception cref="ArgumentException">As for <see cref="Of(Cloth)"/>.</exception>
    public static LaySurface Of(Cloth cloth, LayForm form) => Plain(cloth, form).ShadedAs(cloth);

    /// <summary>The same lay with the off-color strips of a cloth.</summary>
    public LaySurface ShadedAs(Cloth cloth)
    {
        ShadedStrip[] flat = [new(Length.Zero, cloth.NearShade), new(UsableWidth - cloth.FarShade, UsableWidth)];
        ImmutableArray<ShadedStrip> shades = [.. flat.Where(strip => strip.High > strip.Low).SelectMany(OnLay)];
        return shades.IsEmpty ? this : new LaySurface(Form, UsableWidth, Depth, Bands, Folds, Layers) { Shades = shades };
    }

    private IEnumerable<ShadedStrip> OnLay(ShadedStrip flat)
    {
        foreach (LayLayer layer in Layers)
        {
            Length low = layer.OnLay(flat.Low < layer.From ? layer.From : flat.Low);
            Length high = layer.OnLay(flat.High > layer.To ? layer.To : flat.High);
            if ((high - low) * layer.Sign > Length.Zero)
                yield return low < high ? new ShadedStrip(low, high) : new ShadedStrip(high, low);
        }
    }

    private static LaySurface Plain(Cloth cloth, LayForm form) => form switch
    {
        LayForm.Open => Open(cloth.UsableWidth),
        LayForm.Folded => Folded(cloth.UsableWidth),
        LayForm.PartialFold when cloth.FoldDepth is { } depth => PartialFold(cloth.UsableWidth, depth),
        LayForm.DoubleFold => DoubleFold(cloth.UsableWidth),
        LayForm.CrosswiseFold => CrosswiseFold(cloth.UsableWidth),
        LayForm.CrosswiseTurned => CrosswiseTurned(cloth.UsableWidth),
        LayForm.Tubular => Tubular(cloth.UsableWidth),
        _ => throw new ArgumentException("This form of lay is not settled by the cloth alone.", nameof(form)),
    };

    private static Length Guarded(Length width) => width > Length.Zero
        ? width
        : throw new ArgumentException("The usable width of a cloth must be above zero.");
}
