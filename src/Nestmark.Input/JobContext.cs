using Nestmark.Geometry;
using Nestmark.Input.Quantities;
using Nestmark.Input.Yaml;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>What every part of the job reader needs: the file's name, its units, and the list of problems.</summary>
internal sealed record JobContext(string File, ProblemList Problems)
{
    /// <summary>The unit of bare numbers.</summary>
    public LengthUnit Units { get; init; } = LengthUnit.Centimeter;

    /// <summary>The system the job is written in.</summary>
    public MeasureSystem System => Units == LengthUnit.Inch ? MeasureSystem.Imperial : MeasureSystem.Metric;

    /// <summary>A default that is a round number in the job's own system.</summary>
    public Length Default(double millimeters, double inches) =>
        System == MeasureSystem.Imperial ? Length.FromInches(inches) : Length.FromMillimeters(millimeters);

    public void Error(JobNode node, string item, Fault fault) => Problems.Error(File, node, item, fault);

    public void Note(JobNode node, string item, Fault fault) => Problems.Add(Severity.Note, PlaceOf(node, item), fault);

    public Place PlaceOf(JobNode node, string item) => new(File, node.Line, node.Column, item);

    /// <summary>The node as a text, or <c>null</c>; anything else is reported.</summary>
    public TextNode? AsText(JobNode node, string item)
    {
        if (node is TextNode { Text.Length: > 0 } text)
            return text;
        if (node is not BrokenNode)
            Error(node, item, JobFaults.ExpectedText());
        return null;
    }

    /// <summary>The node as a map, or <c>null</c>; anything else is reported.</summary>
    public MapReader? AsMap(JobNode node, string item)
    {
        if (node is MapNode map)
            return new MapReader(map, item, this);
        if (node is not BrokenNode)
            Error(node, item, JobFaults.ExpectedMap());
        return null;
    }

    public Reading<Length> AboveZero(string text) => LengthText.Read(text, Units, LengthRange.AboveZero);

    public Reading<Length> ZeroOrMore(string text) => LengthText.Read(text, Units, LengthRange.ZeroOrMore);

    public Reading<Length> AnyLength(string text) => LengthText.Read(text, Units, LengthRange.Any);
}
