using System.Globalization;
using System.Reflection;
using Nestmark.Geometry;
using Nestmark.Nesting.Search;

namespace Nestmark.Bench;

/// <summary>Changes numbers of the search by name, to measure what each is worth.</summary>
internal static class Tuned
{
    /// <summary>The default numbers with some changed.</summary>
    /// <exception cref="ArgumentException">A name that does not exist, or no number.</exception>
    public static SearchTuning Of(IReadOnlyList<string> changes)
    {
        SearchTuning tuning = SearchTuning.Default with { };
        foreach (string change in changes)
        {
            string[] parts = change.Split('=');
            PropertyInfo property = typeof(SearchTuning).GetProperty(parts[0]) ?? throw new ArgumentException($"The search has no number named {parts[0]}.");
            double value = double.Parse(parts[1], CultureInfo.InvariantCulture);
            object converted = property.PropertyType == typeof(Length)
                ? Length.FromMillimeters(value)
                : Convert.ChangeType(value, property.PropertyType, CultureInfo.InvariantCulture);
            property.SetValue(tuning, converted);
        }
        return tuning;
    }
}
