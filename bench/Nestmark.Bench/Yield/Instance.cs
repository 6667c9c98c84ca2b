using System.Globalization;
using System.Text.Json;

namespace Nestmark.Bench.Yield;

/// <summary>A strip-packing instance in the JSON form of ../shared/datasets (its README), in its own units.</summary>
internal sealed record Instance(
    string Name, double StripWidth, double TotalArea, IReadOnlyList<InstancePiece> Pieces, IReadOnlyList<PublishedLength> Published)
{
    /// <summary>The instance that a checked document holds.</summary>
    /// <param name="root">Checked by <see cref="InstanceReading"/>.</param>
    /// <param name="fallbackName">Its name when the document gives none.</param>
    public static Instance Of(JsonElement root, string fallbackName)
    {
        List<InstancePiece> read = [.. root.GetProperty("pieces").EnumerateArray().Select(InstancePiece.Read)];
        double area = read.Sum(piece => piece.Quantity * piece.Area);
        string name = root.TryGetProperty("name", out JsonElement given) ? given.GetString()! : fallbackName;
        return new Instance(name, root.GetProperty("stripWidth").GetDouble(), area, read, ReadPublished(root));
    }

    private static List<PublishedLength> ReadPublished(JsonElement root)
    {
        if (!root.TryGetProperty("publishedSolutions", out JsonElement solutions) || solutions.ValueKind != JsonValueKind.Array)
            return [];
        List<PublishedLength> published = [];
        foreach (JsonElement solution in solutions.EnumerateArray())
        {
            if (solution.ValueKind == JsonValueKind.Object && solution.TryGetProperty("solutionWidth", out JsonElement length)
                && double.TryParse(length.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            {
                published.Add(new PublishedLength(number));
            }
        }
        return published;
    }
}
