using System.Xml.Linq;

namespace Nestmark.Tests.Conventions;

/// <summary>The project files under src.</summary>
internal static class Projects
{
    /// <summary>Their names, sorted, as "Nestmark.Geometry".</summary>
    public static string[] Names { get; } = [.. Directory.GetDirectories(SourceFolder, "Nestmark.*").Select(Path.GetFileName).OfType<string>().Order(StringComparer.Ordinal)];

    /// <summary>The src folder.</summary>
    public static string SourceFolder => Path.Combine(Fixtures.Repository, "src");

    /// <summary>The projects that a project names.</summary>
    public static IEnumerable<string> References(string name) =>
        Includes(name, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')));

    /// <summary>The packages that a project names.</summary>
    public static IEnumerable<string> Packages(string name) => Includes(name, "PackageReference");

    /// <summary>Every source file under src, generated ones left out.</summary>
    public static IEnumerable<string> SourceFiles() => FilesUnder(SourceFolder);

    /// <summary>Every source file under tests, generated ones left out.</summary>
    public static IEnumerable<string> TestFiles() => FilesUnder(Path.Combine(Fixtures.Repository, "tests"));

    private static IEnumerable<string> FilesUnder(string folder) => Directory.EnumerateFiles(folder, "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Split(Path.DirectorySeparatorChar).Any(folder => folder is "obj" or "bin"))
        .Order(StringComparer.Ordinal);

    private static IEnumerable<string> Includes(string name, string element) =>
        XDocument.Load(Path.Combine(SourceFolder, name, name + ".csproj")).Descendants(element)
            .Select(item => item.Attribute("Include")?.Value).OfType<string>();
}
