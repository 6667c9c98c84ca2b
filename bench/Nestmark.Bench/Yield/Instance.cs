using System.Globalization;
using System.Text.Json;

namespace Nestmark.Bench.Yield;

/// <summary>A strip-packing instance in the JSON form of ../shared/datasets (its README), in its own units.</summary>
internal sealed record Instance(
    string Name, double StripWidth, double TotalArea, IReadOnlyList<InstancePiece> Pieces, IReadOnlyList<PublishedLength> Published)
{
    /// <summary>Reads one instance; <c>null</c> when the file holds something else.</summary>
    public static Instance? Read(string path)
    {
        using JsonDocument document = JsonDocument.Parse(File.ReadAllText(path));
        JsonElement root = document.RootElement;
        if (!root.TryGetProperty("stripWidth", out JsonElement width) || !root.TryGetProperty("pieces", out JsonElement pieces))
            return null;
        List<InstancePiece> read = [.. pieces.EnumerateArray().Select(InstancePiece.Read)];
        double area = read.Sum(piece => piece.Quantity * piece.Area);
        return new Instance(root.GetProperty("name").GetString()!, width.GetDouble(), area, read, ReadPublished(root));
    }

    private static List<PublishedLength> ReadPublished(JsonElement root)
    {
        if (!root.TryGetProperty("publishedSolutions", out JsonElement solutions))
            return [];
        List<PublishedLength> published = [];
        foreach (JsonElement solution in solutions.EnumerateArray())
        {
            if (solution.TryGetProperty("solutionWidth", out JsonElement length)
                && double.TryParse(length.ToString(), NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
            {
                published.Add(new PublishedLength(number));
            }
        }
        return published;
    }
}
