using System.Text.Json.Nodes;
using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>Every verb of <c>alter</c> has an invented sample in <c>fixtures/alterations</c>; what it does to areas and edges is an accepted output.</summary>
public sealed class AlterationFixtureTests
{
    private static readonly string[] Names = ["alterations/shirt.yaml", "alterations/joined.yaml", "alterations/broken-seam.yaml"];

    [Fact]
    public void Every_verb_of_the_schema_has_a_sample()
    {
        string text = string.Concat(Names.Select(name => File.ReadAllText(Fixtures.PathOf(name))));
        JsonArray kinds = JsonNode.Parse(JobSchema.Text)!["$defs"]!["alteration"]!["oneOf"]!.AsArray();
        // "#/$defs/cutOff" is the verb "cut off".
        string[] verbs = [.. kinds.Select(kind => kind!["$ref"]!.GetValue<string>()["#/$defs/".Length..].Replace("O", " o", StringComparison.Ordinal))];
        Assert.True(verbs.Length >= 15, string.Join(", ", verbs));
        Assert.All(verbs, verb => Assert.Contains($"- {{ {verb}: ", text, StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_samples_do_is_as_accepted()
    {
        List<string> lines = [];
        foreach (string name in Names)
        {
            Job job = Jobs.Good(JobReader.Read(Fixtures.PathOf(name), new DiskFiles()));
            lines.AddRange(job.Pieces.SelectMany(piece => piece.Changes.Select(change => Text(piece, change))));
        }
        Approve.Text("alterations.txt", string.Join("\n", lines) + "\n");
    }

    private static string Text(JobPiece piece, PieceChange change) => FormattableString.Invariant(
        $"{piece.Piece.Title}: {change.What} {change.AreaBeforeSquareMillimeters / 100:0.0} to {change.AreaAfterSquareMillimeters / 100:0.0} cm2; {string.Join(", ", change.Edges.Select(Text))}");

    private static string Text(EdgeChange edge) => FormattableString.Invariant($"{edge.Name} {edge.Before?.TotalMillimeters ?? 0:0.0} to {edge.After?.TotalMillimeters ?? 0:0.0} mm");
}
