using Nestmark.Bench.Yield;

namespace Nestmark.Tests.Bench;

public sealed class InstanceReadingTests
{
    [Fact]
    public void A_hand_made_instance_is_read_with_its_published_lengths()
    {
        (Instance? instance, List<string> faults) = Read("""
            {"name": "two", "stripWidth": 10, "publishedSolutions": [{"solutionWidth": "12.5"}, {"solutionWidth": 12}],
             "pieces": [{"id": 1, "quantity": 2, "rotations": [0, 180], "points": [[0, 0], [4, 0], [4, 3]]}]}
            """);
        Assert.Empty(faults);
        Assert.Equal("two", instance!.Name);
        Assert.Equal(12, instance.TotalArea, 1e-9); // 2 right triangles of legs 4 and 3.
        Assert.Equal([12.5, 12], instance.Published.Select(published => published.Length));
    }

    [Theory]
    [InlineData("{\"stripWidth\": 10,", "this is not JSON")]
    [InlineData("{\"stripWidth\": -1, \"pieces\": []}", "stripWidth must be a number above 0")]
    [InlineData("{\"stripWidth\": 10, \"pieces\": []}", "pieces must be a list")]
    [InlineData("{\"stripWidth\": 10, \"pieces\": [{\"id\": 1, \"points\": [[0, 0], [1]]}]}", "piece 1: points must be")]
    [InlineData("{\"stripWidth\": 10, \"pieces\": [{\"id\": 1, \"quantity\": 0, \"points\": [[0, 0], [1, 0], [1, 1]]}]}", "piece 1: quantity must be")]
    [InlineData("{\"stripWidth\": 10, \"pieces\": [{\"id\": 1, \"points\": [[0, 0], [1, 0], [2, 0]]}]}", "piece 1: its points enclose nothing")]
    public void A_broken_instance_is_told(string text, string fault)
    {
        (Instance? instance, List<string> faults) = Read(text);
        Assert.Null(instance);
        Assert.Contains(faults, found => found.Contains(fault, StringComparison.Ordinal));
    }

    [Fact]
    public void Other_json_is_passed_over()
    {
        (Instance? instance, List<string> faults) = Read("{\"regions\": []}");
        Assert.Null(instance);
        Assert.Empty(faults);
    }

    private static (Instance? Instance, List<string> Faults) Read(string text)
    {
        string folder = Directory.CreateTempSubdirectory("nestmark-instance").FullName;
        try
        {
            string path = Path.Combine(folder, "made.json");
            File.WriteAllText(path, text);
            List<string> faults = [];
            return (InstanceReading.Read(path, faults), faults);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }
}
