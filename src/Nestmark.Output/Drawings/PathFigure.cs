using System.Collections.Immutable;

namespace Nestmark.Output.Drawings;

/// <summary>A line or a closed shape.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Runs">Lines of two places or more, or rings; of several rings the inner ones are holes.</param>
/// <param name="Ends">Whether each run is closed.</param>
/// <param name="Line">Its line; <c>null</c> for none.</param>
/// <param name="FillGrayRatio">Its filling, 0 black to 1 white; <c>null</c> for none.</param>
internal sealed record PathFigure(
    Role Role, ImmutableArray<ImmutableArray<Spot>> Runs, PathEnds Ends, Ink? Line, double? FillGrayRatio) : Figure
{
    /// <inheritdoc/>
    public override Area Bounds { get; } = Area.Around(Runs.SelectMany(run => run));
}
