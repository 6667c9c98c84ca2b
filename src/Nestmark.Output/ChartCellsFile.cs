using System.Text;
using System.Text.Json;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Store;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Output;

/// <summary>The findings of a chart's cells on disk, so that an interrupted chart goes on where it stopped.</summary>
/// <remarks>A line of JSON for each cell, written as soon as it is found. A line that was cut off, or that this program does not understand, is passed over.</remarks>
public sealed class ChartCellsFile
{
    /// <summary>Its name in the folder of the chart.</summary>
    public const string Name = "chart.cells";

    private readonly string _path;
    private readonly string _origin;
    private readonly Dictionary<string, ChartFinding> _findings = new(StringComparer.Ordinal);
    private bool _isOwn;
    private bool _isCutOff;

    private ChartCellsFile(string path, string origin) => (_path, _origin) = (path, origin);

    /// <summary>Why a finding could not be kept; <c>null</c> as long as all could.</summary>
    public Problem? Problem { get; private set; }

    /// <summary>The file of a job in a folder; without findings when it is not there, cannot be read or belongs to another job.</summary>
    /// <param name="folder">Need not exist.</param>
    /// <param name="origin">The job's tag (<see cref="JobOrigin"/>).</param>
    public static ChartCellsFile Open(string folder, string origin)
    {
        ChartCellsFile file = new(Path.Combine(folder, Name), origin);
        try
        {
            if (File.Exists(file._path))
                file.Load(File.ReadAllText(file._path));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            file.Problem = StoreProblems.Of(file._path, fault);
        }
        return file;
    }

    /// <summary>What was found for a key (<see cref="ChartKeys"/>), or <c>null</c>.</summary>
    public ChartFinding? Find(string key) => _findings.GetValueOrDefault(key);

    /// <summary>Keeps a finding. After the first one that cannot be written nothing more is tried.</summary>
    public void Add(string key, ChartFinding finding)
    {
        if (Problem is not null)
            return;
        try
        {
            Directory.CreateDirectory(Path.GetDirectoryName(_path)!);
            if (!_isOwn)
            {
                File.WriteAllText(_path, _origin + "\n");
                _isCutOff = false;
            }
            _isOwn = true;
            File.AppendAllText(_path, (_isCutOff ? "\n" : "") + Line(key, finding) + "\n");
            _isCutOff = false;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            Problem = StoreProblems.Of(_path, fault);
        }
    }

    private void Load(string text)
    {
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        _isCutOff = !text.EndsWith('\n');
        _isOwn = lines.Length > 0 && lines[0] == _origin;
        foreach (string line in _isOwn ? lines.Skip(1) : [])
        {
            if (Read(line) is (string key, ChartFinding finding))
                _findings[key] = finding;
        }
    }

    private static string Line(string key, ChartFinding finding)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes))
        {
            json.WriteStartObject();
            json.WriteString("key", key);
            json.WriteNumber("layLength_um", finding.LayLength.Micrometers);
            json.WriteNumber("efficiency", finding.EfficiencyRatio);
            json.WriteStartArray("unplaced");
            foreach (Unplaced unplaced in finding.Unplaced)
                JsonFile.WriteUnplaced(json, unplaced);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    private static (string, ChartFinding)? Read(string line)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(line);
            JsonElement root = document.RootElement;
            return (root.GetProperty("key").GetString()!, new ChartFinding(
                Length.FromMicrometers(root.GetProperty("layLength_um").GetInt64()), root.GetProperty("efficiency").GetDouble(),
                [.. root.GetProperty("unplaced").EnumerateArray().Select(unplaced => new Unplaced(Text(unplaced, "piece"), Text(unplaced, "size"), Text(unplaced, "reason")))]));
        }
        catch (Exception fault) when (fault is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            return null;
        }

        static string Text(JsonElement element, string key) => element.GetProperty(key).GetString() ?? "";
    }
}
