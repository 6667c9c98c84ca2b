using Nestmark.Input;
using Nestmark.Tests.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Cli;

public sealed class FitCommandTests
{
    [Fact]
    public void What_comes_out_only_with_a_change_is_written_besides_and_the_verdict_stays_no()
    {
        CliRun run = new() { Job = Read("leftovers/narrower-hem.yaml") };
        Assert.Equal(1, run.Run("fit job.yaml --steps 2000"));
        Assert.StartsWith("shell: no, not everything comes out of the leftovers.\n", run.Out, StringComparison.Ordinal);
        Assert.Contains("\n  Everything fits with D-E of sleeve at 2 cm instead of 4 cm.\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(Path.Combine("out", "instead"), run.Options!.Folder);
        Assert.EndsWith($"{run.Options.Folder}: guide.pdf, marker.pdf, marker.svg, report.json\n", run.Out, StringComparison.Ordinal);
        Assert.Equal(2, run.Plan!.Cloths[0].Marker.Placements.Length);
    }

    [Fact]
    public void Where_everything_fits_nothing_is_written_besides()
    {
        CliRun run = new() { Job = Read("leftovers/plaid.yaml") };
        Assert.Equal(0, run.Run("fit job.yaml --steps 2000"));
        Assert.Equal("out", run.Options!.Folder);
        Assert.Contains("note: Leftovers of plaid, and what is bought beside them, are laid as plain cloth; not kept: yoke.center matches back.center crosswise", run.Out, StringComparison.Ordinal);
        run.Run("fit job.yaml --steps 2000 --quiet");
        Assert.Equal(
            "plaid: yes, everything comes out of the leftovers, laid as plain cloth.\n  from end: back, yoke (2 times)\n  not kept: yoke.center matches back.center crosswise; back.A on a crosswise bar\n",
            run.Out);
    }

    [Fact]
    public void A_job_without_leftovers_is_answered_with_the_remedy()
    {
        CliRun run = new();
        Assert.Equal(1, run.Run("fit job.yaml"));
        Assert.Contains("The job lists no leftovers.", run.Error, StringComparison.Ordinal);
        Assert.Null(run.Plan);
    }

    private static Job Read(string fixture) => Jobs.Good(JobReader.Read(Fixtures.PathOf(fixture), new DiskFiles()));
}
