using Nestmark.Geometry;

namespace Nestmark.Cloths;

/// <summary>The cloth as spread: a strip that runs along x without end, y from the fold (or the near selvage) across.</summary>
/// <param name="Form">How it is spread.</param>
/// <param name="UsableWidth">Usable width of the cloth, all layers of it side by side.</param>
/// <param name="Depth">Extent of the lay along y, from 0.</param>
/// <param name="Layers">Layers that one placement cuts.</param>
public sealed record LaySurface(LayForm Form, Length UsableWidth, Length Depth, int Layers)
{
    /// <summary>Whether y = 0 is a fold.</summary>
    public bool HasFold => Form == LayForm.Folded;

    /// <summary>The surface a cloth gives when spread as it says.</summary>
    /// <exception cref="ArgumentException">Nothing of its width is left for pieces.</exception>
    public static LaySurface Of(Cloth cloth)
    {
        Length usable = cloth.UsableWidth;
        if (usable <= Length.Zero)
            throw new ArgumentException("The usable width of a cloth must be above zero.", nameof(cloth));
        return cloth.Lay == LayForm.Folded
            ? new LaySurface(LayForm.Folded, usable, usable / 2, 2)
            : new LaySurface(LayForm.Open, usable, usable, 1);
    }
}
