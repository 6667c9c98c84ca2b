using System.Globalization;
using System.Reflection;
using Nestmark.Geometry;
using Nestmark.Nesting.Search;

namespace Nestmark.Bench;

/// <summary>Changes numbers of the search by name, to measure what each is worth.</summary>
internal static class Tuned
{
    /// <summary>The default numbers with some changed.</summary>
    /// <param name="changes">Each Name=value, without a fault.</param>
    public static SearchTuning Of(IReadOnlyList<string> changes)
    {
        SearchTuning tuning = SearchTuning.Default with { };
        foreach (string change in changes)
        {
            string[] parts = change.Split('=');
            PropertyInfo property = Find(parts[0])!;
            property.SetValue(tuning, Converted(property.PropertyType, double.Parse(parts[1], CultureInfo.InvariantCulture)));
        }
        return tuning;
    }

    /// <summary>What is wrong with a change; <c>null</c> when nothing is.</summary>
    public static string? FaultOf(string change)
    {
        string[] parts = change.Split('=');
        if (Find(parts[0]) is null)
            return $"--tune {change}: the search has no number named '{parts[0]}'. It has {string.Join(", ", typeof(SearchTuning).GetProperties().Where(property => property.CanWrite).Select(property => property.Name))}.";
        return parts.Length == 2 && double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && Math.Abs(value) <= int.MaxValue
            ? null
            : $"--tune {change}: expected {parts[0]}= and a number.";
    }

    private static PropertyInfo? Find(string name) => typeof(SearchTuning).GetProperty(name) is { CanWrite: true } property ? property : null;

    private static object Converted(Type type, double value) =>
        type == typeof(Length) ? Length.FromMillimeters(value) : Convert.ChangeType(value, type, CultureInfo.InvariantCulture);
}
