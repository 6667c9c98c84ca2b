using System.Globalization;
using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Tests.Nesting;

/// <summary>Against the open benchmark sets of ESICUP (CC0) in ../shared/datasets.</summary>
public sealed class OpenInstanceTests
{
    // The jigsaws dighe1 and dighe2 have a proven optimum: length 100 for a strip 100 wide, filled without a gap.
    [Theory]
    [InlineData("dighe1")]
    [InlineData("dighe2")]
    public void A_jigsaw_is_put_together_exactly(string name)
    {
        (LayTask task, double unit) = Load(name);
        Marker marker = MarkerMaking.Make(task, Tasks.Steps(500_000, seed: 2));
        Assert.Equal(100, marker.LayLength.Micrometers / unit);
        Assert.Empty(MarkerJudge.Faults(task, marker));
    }

    // Published best lengths stand in the files; a short search must come within a tenth of them.
    [Theory]
    [InlineData("albano")]
    [InlineData("dagli")]
    [InlineData("shirts")]
    public void A_short_search_comes_within_a_tenth_of_the_published_length(string name)
    {
        (LayTask task, double unit) = Load(name);
        Marker marker = MarkerMaking.Make(task, Tasks.Steps(4_000));
        double published = PublishedLength(name);
        Assert.InRange(marker.LayLength.Micrometers / unit, 0.95 * published, 1.1 * published);
        Assert.Empty(MarkerJudge.Faults(task, marker));
    }

    private static JsonDocument Read(string name) => JsonDocument.Parse(File.ReadAllText(Path.Combine(Fixtures.Datasets, name + ".json")));

    private static double PublishedLength(string name)
    {
        using JsonDocument document = Read(name);
        return document.RootElement.GetProperty("publishedSolutions").EnumerateArray().Min(solution => double.Parse(solution.GetProperty("solutionWidth").GetString()!, CultureInfo.InvariantCulture));
    }

    private static (LayTask Task, double MicrometersPerUnit) Load(string name)
    {
        using JsonDocument document = Read(name);
        double width = document.RootElement.GetProperty("stripWidth").GetDouble();
        double unit = Math.Pow(10, 6 - Math.Floor(Math.Log10(width)));
        List<Demand> demands = [];
        foreach (JsonElement piece in document.RootElement.GetProperty("pieces").EnumerateArray())
        {
            Polygon outline = Polygon.Of(piece.GetProperty("points").EnumerateArray().Select(point =>
                new Point((long)Math.Round(point[0].GetDouble() * unit), (long)Math.Round(point[1].GetDouble() * unit))));
            Turn[] turns = [.. piece.GetProperty("rotations").EnumerateArray().Select(rotation => Turn.By(Angle.FromDegrees(rotation.GetDouble())))];
            demands.AddRange(Tasks.Demands(Tasks.PieceOf(piece.GetProperty("id").ToString(), outline), piece.GetProperty("quantity").GetInt32(), turns));
        }
        return (Tasks.Open(width * unit / 1000, demands), unit);
    }
}
