using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Pdf;

/// <summary>A closed outline of a sheet and what lies in it.</summary>
/// <param name="Number">Its number over the file, from 1; sheets in order, outlines from the top.</param>
/// <param name="Sheet">The sheet it is on.</param>
/// <param name="Run">Its line.</param>
/// <param name="Points">Its line, flattened.</param>
/// <param name="Texts">The texts in it, from the top.</param>
/// <param name="Inside">The lines in it, or with an end within 3 mm of it.</param>
internal sealed record PdfOutline(
    int Number, PdfSheet Sheet, SubPath Run, ImmutableArray<Point> Points, ImmutableArray<PdfWords> Texts, ImmutableArray<SubPath> Inside)
{
    /// <summary>The name by which it can always be called: "piece-3".</summary>
    public string NumberName => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"piece-{Number}");

    /// <summary>Its first text, or its number where it has none.</summary>
    public string Name => Texts.Length > 0 ? Texts[0].Text : NumberName;

    /// <summary>Whether a name calls it.</summary>
    public bool IsCalled(string name) => Same(NumberName, name) || Texts.Any(words => Same(words.Text, name));

    private static bool Same(string left, string right) => string.Equals(left.Trim(), right.Trim(), StringComparison.OrdinalIgnoreCase);
}
