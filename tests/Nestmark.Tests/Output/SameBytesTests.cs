using Nestmark.Output;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

public sealed class SameBytesTests
{
    // The PDF library draws ids and font tags at random for each document, so even one process would show a difference.
    [Fact]
    public void The_same_plan_gives_the_same_bytes()
    {
        Assert.Equal(All(PlanBuilder.TwoCloths()), All(PlanBuilder.TwoCloths()));
    }

    [Theory]
    [InlineData("guide")]
    [InlineData("marker")]
    public void Qpdf_finds_nothing_wrong(string file)
    {
        Plan plan = PlanBuilder.TwoCloths();
        byte[] pdf = file == "guide" ? GuidePdf.Write(plan) : MarkerPdf.Write(plan, Paper.A4);
        string output = Tools.Run("qpdf", pdf, "--check");
        Assert.Contains("No syntax or stream encoding errors found", output, StringComparison.Ordinal);
        Assert.DoesNotContain("WARNING", output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Documents_written_at_the_same_time_do_not_disturb_each_other()
    {
        byte[] alone = GuidePdf.Write(PlanBuilder.Folded());
        byte[][] together = new byte[4][];
        Parallel.For(0, 4, i => together[i] = GuidePdf.Write(PlanBuilder.Folded()));
        Assert.All(together, bytes => Assert.Equal(alone, bytes));
    }

    private static byte[] All(Plan plan) =>
        [.. ReportJson.Write(plan), .. MarkerSvg.Write(plan), .. GuidePdf.Write(plan), .. MarkerPdf.Write(plan, Paper.A4)];
}
