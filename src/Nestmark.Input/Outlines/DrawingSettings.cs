using Nestmark.Geometry;
using Nestmark.Input.Pdf;
using Nestmark.Input.Yaml;

namespace Nestmark.Input.Outlines;

/// <summary>What a job says about one drawing, under the key drawings.</summary>
/// <param name="File">The drawing, as pieces name it.</param>
/// <param name="Context">The job.</param>
internal sealed record DrawingSettings(string File, JobContext Context)
{
    /// <summary>Where it stands in the job; <c>null</c> where the job says nothing about the drawing.</summary>
    public JobNode? Node { get; init; }

    /// <summary>How many times larger than drawn; <c>null</c> when not given, or given in units per inch.</summary>
    public double? ScaleRatio { get; init; }

    /// <summary>Units of the drawing in an inch; <c>null</c> when not given.</summary>
    public double? UnitsPerInchRatio { get; init; }

    /// <summary>What one unit of a DXF drawing is worth; <c>null</c> when the job does not say it.</summary>
    public double? UnitMillimeters { get; init; }

    /// <summary>The true side of the drawing's test square; <c>null</c> when not given.</summary>
    public Length? TestSquareSide { get; init; }

    /// <summary>The id of the test square; empty takes the element with the class or id "test-square".</summary>
    public string TestSquareId { get; init; } = "";

    /// <summary>How the pages are joined; <c>null</c> for one sheet a page.</summary>
    public PdfTiles? Tiles { get; init; }

    /// <summary>Which lines of the drawing count.</summary>
    public PdfSelection Select { get; init; } = PdfSelection.Everything;

    /// <summary>The path of a key in problems.</summary>
    public string Item(string key) => key.Length == 0 ? "drawings." + File : $"drawings.{File}.{key}";

    /// <summary>Reports an error at the drawing's settings, or at the top of the job where it has none.</summary>
    public void Error(string key, Fault fault) => Context.Error(Node ?? new TextNode("", 0, 0), Item(key), fault);

    /// <summary>Reports a note there.</summary>
    public void Note(string key, Fault fault) => Context.Note(Node ?? new TextNode("", 0, 0), Item(key), fault);
}
