using System.Collections.Immutable;
using System.Text;
using Nestmark.Output;
using Nestmark.Output.Store;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

public sealed class OutputStoreTests : IDisposable
{
    private const string Origin = "nestmark-job:0123456789abcdef0123456789abcdef";

    private readonly string _folder = Directory.CreateTempSubdirectory("nestmark-store-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void All_files_are_written_and_nothing_else()
    {
        Assert.Empty(Write("one", "two"));
        Assert.Equal(["one", "two"], NamesIn(_folder));
        Assert.Equal(Origin + " one", File.ReadAllText(Path.Combine(_folder, "one")));
    }

    [Fact]
    public void The_folder_is_made()
    {
        string deeper = Path.Combine(_folder, "a", "b");
        Assert.Empty(OutputStore.Write(deeper, [FileOf("one", "x")], Origin, Replacing.OwnFiles));
        Assert.Equal(["one"], NamesIn(deeper));
    }

    [Fact]
    public void Files_of_the_same_job_are_replaced()
    {
        Write("one");
        Assert.Empty(OutputStore.Write(_folder, [FileOf("one", "new")], Origin, Replacing.OwnFiles));
        Assert.Equal("new", File.ReadAllText(Path.Combine(_folder, "one")));
        Assert.Equal(["one"], NamesIn(_folder));
    }

    [Fact]
    public void A_foreign_file_is_refused_and_nothing_is_written()
    {
        File.WriteAllText(Path.Combine(_folder, "two"), "someone's own");
        Problem problem = Assert.Single(Write("one", "two"));
        Assert.Contains("does not come from this job", problem.What, StringComparison.Ordinal);
        Assert.Equal(Path.Combine(_folder, "two"), problem.Where.File);
        Assert.Equal(["two"], NamesIn(_folder));
        Assert.Equal("someone's own", File.ReadAllText(Path.Combine(_folder, "two")));
    }

    [Fact]
    public void Obstacles_are_told_ahead_and_nothing_is_changed()
    {
        string deeper = Path.Combine(_folder, "a", "b");
        Assert.Empty(OutputStore.Obstacles(deeper, ["one"], Origin, Replacing.OwnFiles));
        Assert.Empty(NamesIn(_folder));
        File.WriteAllText(Path.Combine(_folder, "two"), "someone's own");
        Assert.Equal(Path.Combine(_folder, "two"), Assert.Single(OutputStore.Obstacles(_folder, ["one", "two"], Origin, Replacing.OwnFiles)).Where.File);
        Assert.Empty(OutputStore.Obstacles(_folder, ["one", "two"], Origin, Replacing.AnyFile));
        Assert.Single(OutputStore.Obstacles(Path.Combine(_folder, "two"), ["one"], Origin, Replacing.AnyFile));
    }

    [Fact]
    public void A_file_of_another_job_is_foreign()
    {
        File.WriteAllText(Path.Combine(_folder, "one"), "nestmark-job:ffffffffffffffffffffffffffffffff");
        Assert.Single(Write("one"));
    }

    [Fact]
    public void Every_foreign_file_is_named_at_once()
    {
        File.WriteAllText(Path.Combine(_folder, "one"), "");
        File.WriteAllText(Path.Combine(_folder, "two"), "");
        Assert.Equal(2, Write("one", "two").Length);
    }

    [Fact]
    public void A_foreign_file_is_replaced_when_asked_to()
    {
        File.WriteAllText(Path.Combine(_folder, "one"), "someone's own");
        Assert.Empty(OutputStore.Write(_folder, [FileOf("one", "new")], Origin, Replacing.AnyFile));
        Assert.Equal("new", File.ReadAllText(Path.Combine(_folder, "one")));
    }

    [Fact]
    public void A_folder_in_the_place_of_a_file_is_refused_even_then()
    {
        Directory.CreateDirectory(Path.Combine(_folder, "two"));
        Problem problem = Assert.Single(OutputStore.Write(_folder, [FileOf("one", "x"), FileOf("two", "x")], Origin, Replacing.AnyFile));
        Assert.Contains("it is a folder", problem.What, StringComparison.Ordinal);
        Assert.Equal([], NamesIn(_folder));
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_is_a_problem()
    {
        string path = Path.Combine(_folder, "plain");
        File.WriteAllText(path, "");
        Assert.Contains("it is a file", Assert.Single(OutputStore.Write(path, [FileOf("one", "x")], Origin, Replacing.OwnFiles)).What, StringComparison.Ordinal);
        Problem below = Assert.Single(OutputStore.Write(Path.Combine(path, "deeper"), [FileOf("one", "x")], Origin, Replacing.OwnFiles));
        Assert.Equal(Severity.Error, below.Severity);
    }

    [Fact]
    public void When_one_name_cannot_be_taken_the_others_keep_their_old_content()
    {
        Write("one");
        // The place where the old second file would wait is taken by a folder: its turn fails after the first has been renamed.
        Write("two");
        Directory.CreateDirectory(Path.Combine(_folder, ".two.nestmark-old"));
        ImmutableArray<Problem> problems = OutputStore.Write(
            _folder, [FileOf("one", "new"), FileOf("two", "new"), FileOf("three", "new")], Origin, Replacing.OwnFiles);
        Assert.Single(problems);
        Assert.Equal(["one", "two"], NamesIn(_folder));
        Assert.Equal(Origin + " one", File.ReadAllText(Path.Combine(_folder, "one")));
        Assert.Equal(Origin + " two", File.ReadAllText(Path.Combine(_folder, "two")));
    }

    // A name that no file system takes stands for a full disk: the folders are there when the writing fails.
    [Fact]
    public void Folders_made_for_files_that_could_not_be_written_go_again()
    {
        OutputFile impossible = FileOf(new string('n', 300), "x");
        Assert.Single(OutputStore.Write(Path.Combine(_folder, "a", "b") + Path.DirectorySeparatorChar, [FileOf("one", "x"), impossible], Origin, Replacing.OwnFiles));
        Assert.Empty(Directory.GetDirectories(_folder));
        Directory.CreateDirectory(Path.Combine(_folder, "kept"));
        Assert.Single(OutputStore.Write(Path.Combine(_folder, "kept", "c"), [impossible], Origin, Replacing.OwnFiles));
        Assert.Single(OutputStore.Write(Path.Combine(_folder, "kept"), [impossible], Origin, Replacing.OwnFiles));
        Assert.Empty(Directory.GetFileSystemEntries(Path.Combine(_folder, "kept")));
    }

    [Fact]
    public void Temporary_files_of_a_run_that_was_cut_off_are_cleaned()
    {
        File.WriteAllText(Path.Combine(_folder, ".report.json.nestmark-new"), "half");
        File.WriteAllText(Path.Combine(_folder, ".guide.pdf.nestmark-old"), "old");
        Write("one");
        Assert.Equal(["one"], NamesIn(_folder));
    }

    [Theory]
    [InlineData("")]
    [InlineData("../one")]
    [InlineData("a/b")]
    public void A_name_with_a_folder_is_the_callers_mistake(string name) =>
        Assert.Throws<ArgumentException>(() => OutputStore.Write(_folder, [FileOf(name, "x")], Origin, Replacing.OwnFiles));

    // 28 is ENOSPC on Linux, 0x80070070 ERROR_DISK_FULL on Windows (from memory); .NET keeps them in HResult.
    [Theory]
    [InlineData(28)]
    [InlineData(unchecked((int)0x80070070))]
    public void A_full_disk_is_called_by_its_name(int code) =>
        Assert.Equal("The disk is full.", StoreProblems.Of("x", new IOException("?", code)).What);

    [Fact]
    public void A_missing_permission_is_called_by_its_name() =>
        Assert.Contains("permission", StoreProblems.Of("x", new UnauthorizedAccessException()).What, StringComparison.Ordinal);

    [Fact]
    public void Every_kind_of_output_carries_the_jobs_tag()
    {
        Plan plan = PlanBuilder.Folded();
        byte[] tag = Encoding.ASCII.GetBytes(JobOrigin.Of(plan.Job));
        byte[][] outputs = [ReportJson.Write(plan), MarkerSvg.Write(plan), GuidePdf.Write(plan), MarkerPdf.Write(plan, Paper.A4)];
        Assert.All(outputs, bytes => Assert.True(bytes.AsSpan().IndexOf(tag) >= 0));
    }

    [Fact]
    public void Jobs_with_another_title_or_file_have_another_tag()
    {
        Job job = PlanBuilder.Folded().Job;
        Assert.Equal(3, new[] { job, job with { Title = "x" }, job with { Source = "x" } }.Select(JobOrigin.Of).Distinct().Count());
    }

    private ImmutableArray<Problem> Write(params string[] names) =>
        OutputStore.Write(_folder, [.. names.Select(name => FileOf(name, Origin + " " + name))], Origin, Replacing.OwnFiles);

    private static OutputFile FileOf(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    private static string[] NamesIn(string folder) => [.. Directory.GetFiles(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];
}
