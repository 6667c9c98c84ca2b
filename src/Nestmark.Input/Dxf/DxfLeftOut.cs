using System.Globalization;

namespace Nestmark.Input.Dxf;

/// <summary>Counts what was not read, by what it is.</summary>
internal sealed class DxfLeftOut
{
    private readonly SortedDictionary<string, int> _counts = new(StringComparer.Ordinal);

    public bool IsEmpty => _counts.Count == 0;

    public void Add(string what) => _counts[what] = _counts.GetValueOrDefault(what) + 1;

    public void Add(DxfEntity entity, string why) => Add($"{entity.Type} {why}");

    /// <summary>"2 DIMENSION, 1 LINE on layer 5": sorted, so that it is the same on every run.</summary>
    public IReadOnlyList<string> List() => [.. _counts.Select(pair => string.Create(CultureInfo.InvariantCulture, $"{pair.Value} {pair.Key}"))];
}
