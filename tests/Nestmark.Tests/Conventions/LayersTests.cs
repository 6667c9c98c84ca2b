using System.Text.RegularExpressions;

namespace Nestmark.Tests.Conventions;

/// <summary>The layers of the house style: references point one way only, a package is used by one project.</summary>
public sealed partial class LayersTests
{
    /// <summary>What each project may use directly. A new line here is a change of design: say why in DEVELOPERS.md.</summary>
    private static readonly Dictionary<string, string[]> MayUse = new()
    {
        ["Nestmark.Geometry"] = ["NetTopologySuite"],
        ["Nestmark.Pieces"] = ["Nestmark.Geometry"],
        ["Nestmark.Cloth"] = ["Nestmark.Geometry"],
        ["Nestmark.Nesting"] = ["Nestmark.Pieces", "Nestmark.Cloth"],
        ["Nestmark.Yardage"] = ["Nestmark.Nesting"],
        ["Nestmark.Input"] = ["Nestmark.Yardage", "YamlDotNet", "PdfPig"],
        ["Nestmark.Output"] = ["Nestmark.Yardage", "PDFsharp"],
        ["Nestmark.Cli"] = ["Nestmark.Input", "Nestmark.Output", "System.CommandLine", "Spectre.Console"],
    };

    [Fact]
    public void Every_project_uses_only_what_its_layer_may() => Assert.Empty(
        from project in Projects.Names
        from used in Projects.References(project).Concat(Projects.Packages(project))
        where !MayUse.GetValueOrDefault(project, []).Contains(used)
        select $"{project} uses {used}");

    [Fact]
    public void Every_project_is_known_here() => Assert.Equal(MayUse.Keys.Order(StringComparer.Ordinal), Projects.Names);

    // house-style.md: NetTopologySuite in one file each for clipping and offset.
    [Fact]
    public void The_geometry_package_stays_in_the_files_for_clipping_and_offset() => Assert.Empty(
        Projects.SourceFiles()
            .Where(path => File.ReadAllText(path).Contains("NetTopologySuite.", StringComparison.Ordinal))
            .Select(path => Path.GetFileNameWithoutExtension(path))
            .Except(["Clipping", "Offset"]));

    [Fact]
    public void No_source_file_is_longer_than_500_lines() => Assert.Empty(
        Projects.SourceFiles().Where(path => File.ReadLines(path).Count() > 500).Select(Path.GetFileName));

    [Fact]
    public void Each_source_file_holds_one_top_level_type() => Assert.Empty(
        Projects.SourceFiles().Where(path => TopLevelType().Count(File.ReadAllText(path)) > 1).Select(Path.GetFileName));

    [Fact]
    public void Only_the_program_itself_knows_the_console() => Assert.Empty(
        Projects.SourceFiles()
            .Where(path => ConsoleCall().IsMatch(File.ReadAllText(path)))
            .Select(path => Path.GetRelativePath(Projects.SourceFolder, path))
            .Except([Path.Combine("Nestmark.Cli", "Program.cs")]));

    [GeneratedRegex(@"^(public|internal|file|sealed|static|abstract|readonly|partial|ref| )*(class|struct|record|interface|enum) ", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex TopLevelType();

    [GeneratedRegex(@"(?<![\w.])Console\.", RegexOptions.CultureInvariant)]
    private static partial Regex ConsoleCall();
}
