using System.Text.Json;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Yardage;

/// <summary>What matching costs, against published rules of thumb and by plans of the fixtures.</summary>
public sealed class MatchingCostsTests
{
    // references/trade.md 6: [GALA] 1 1/4 in x 2 and 4 1/4 in x 2, none side by side; [MTILT] 4 in x 4; [ATD] 6 in x 3.
    [Theory]
    [InlineData(1.25, 2, 2.5)]
    [InlineData(4.25, 2, 8.5)]
    [InlineData(4, 4, 16)]
    [InlineData(6, 3, 18)]
    [InlineData(6, 1, 0)]
    public void The_rule_of_thumb_is_the_published_one(double repeatInches, int pieces, double extraInches) =>
        Assert.Equal(Length.FromInches(extraInches), MatchingCosts.RuleOfThumb(Length.FromInches(repeatInches), pieces));

    // By hand: pieces 40 cm long; one that begins 2 cm before the end of another follows it, one that begins 21 cm before its end lies beside it.
    [Theory]
    [InlineData(380, 2)]
    [InlineData(400, 2)]
    [InlineData(190, 1)]
    public void Pieces_that_reach_into_each_others_ends_follow_each_other(int secondAt, int stacked)
    {
        Piece panel = TestPieces.Rectangle("panel", 400, 100, "1");
        Placement[] placements = [.. new[] { 0, secondAt }.Select((x, i) => new Placement(panel, "", i + 1, 1, FoldContact.Free, Turn.None, Point.FromMillimeters(x, 200 * i)))];
        Marker marker = new(LaySurface.Open(Length.FromCentimeters(90)), Length.FromCentimeters(80), [.. placements], []);
        Assert.Equal(stacked, MatchingCosts.Stacked(marker, _ => true));
    }

    [Theory]
    [InlineData("lengthwise")]
    [InlineData("plaid")]
    [InlineData("pocket")]
    [InlineData("border")]
    public void Each_fixture_is_laid_with_its_rules_kept_and_says_what_that_costs(string name)
    {
        Job job = JobReader.Read(Fixtures.PathOf(Path.Combine("stripes", name + ".yaml")), new DiskFiles()).Job!;
        Plan plan = Planner.Make(job, new Effort(null, 60, 1, 1), (_, _) => { }, CancellationToken.None);
        ClothPlan cloth = Assert.Single(plan.Cloths);
        Assert.True(plan.IsComplete);
        Assert.Equal(job.Matches.Length, cloth.Rules.Length);
        Assert.Equal(cloth.Marker.ClothLength, cloth.Matching!.PlainLength + cloth.Matching.ExtraLength);
        Assert.Contains(plan.Notes, note => note.What.StartsWith("Matching ", StringComparison.Ordinal));
        JsonElement matching = JsonDocument.Parse(ReportJson.Write(plan)).RootElement.GetProperty("cloths")[0].GetProperty("matching");
        Assert.Equal(job.Matches.Length, matching.GetProperty("rules").GetArrayLength());
    }
}
