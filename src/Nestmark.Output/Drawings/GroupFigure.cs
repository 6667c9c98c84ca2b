namespace Nestmark.Output.Drawings;

/// <summary>Figures that belong together, with a title for those who read the picture's text.</summary>
/// <param name="Id">Unique on the picture, letters, digits, dots and dashes.</param>
/// <param name="Title">What it is.</param>
/// <param name="Description">More about it; may be empty.</param>
/// <param name="Inner">The figures.</param>
internal sealed record GroupFigure(string Id, string Title, string Description, Drawing Inner) : Figure
{
    /// <inheritdoc/>
    public override Area Bounds => Inner.Bounds;
}
