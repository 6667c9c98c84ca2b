using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Drawings;

/// <summary>Lines, text and areas at fixed places in millimeters, y up: the one picture that PDF and SVG draw from. Later figures lie on top.</summary>
internal sealed class Drawing
{
    private readonly List<Figure> _figures = [];

    /// <summary>The figures, lowest first.</summary>
    public IReadOnlyList<Figure> Figures => _figures;

    /// <summary>The smallest area that holds everything; there must be something.</summary>
    public Area Bounds => _figures.Select(figure => figure.Bounds).Aggregate((left, right) => left.Including(right));

    /// <summary>Adds a figure on top.</summary>
    public void Add(Figure figure) => _figures.Add(figure);

    /// <summary>Adds a line through some places.</summary>
    public void Line(Role role, Ink ink, params ReadOnlySpan<Spot> spots) =>
        Add(new PathFigure(role, [[.. spots]], PathEnds.Open, ink, null));

    /// <summary>Adds several lines as one figure; nothing when there are none.</summary>
    public void Lines(Role role, Ink ink, IEnumerable<ImmutableArray<Spot>> lines)
    {
        ImmutableArray<ImmutableArray<Spot>> runs = [.. lines];
        if (!runs.IsEmpty)
            Add(new PathFigure(role, runs, PathEnds.Open, ink, null));
    }

    /// <summary>Adds a closed line.</summary>
    public void Ring(Role role, Ink ink, params ReadOnlySpan<Spot> spots) =>
        Add(new PathFigure(role, [[.. spots]], PathEnds.Closed, ink, null));

    /// <summary>Adds a filled area without a line.</summary>
    public void Fill(Role role, double grayRatio, params ReadOnlySpan<Spot> spots) =>
        Add(new PathFigure(role, [[.. spots]], PathEnds.Closed, null, grayRatio));

    /// <summary>Adds an upright line of text in black.</summary>
    public void Text(Role role, string text, Spot at, double sizeMillimeters, Anchor anchor = Anchor.Start, FontWeight weight = FontWeight.Regular) =>
        Add(new TextFigure(role, text, at, sizeMillimeters, anchor, weight, Angle.Zero, 0));
}
