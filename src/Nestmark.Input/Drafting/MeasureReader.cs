using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Seams;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Seams;

namespace Nestmark.Input.Drafting;

/// <summary>Reads the measures of drafts.</summary>
internal static class MeasureReader
{
    /// <summary>A measure that must be there: "70", "front.A-B + 2 x back.C-D", or one for each size; <c>null</c> after an error.</summary>
    public static Measure? Read(MapReader reader, string key, string example)
    {
        if (reader.Find(key) is not MapEntry entry)
        {
            reader.Context.Error(reader.Map, reader.Path, JobFaults.MissingKey(key, example));
            return null;
        }
        string item = reader.PathOf(key);
        if (entry.Value is not MapNode sizes)
            return Terms(entry.Value, item, reader.Context) is { IsDefault: false } terms ? new Measure([("", terms)], entry.Value, item) : null;
        (string Size, ImmutableArray<SeamTerm> Terms)[] bySize = [.. sizes.Entries.Select(size => (size.Key.Text, Terms(size.Value, item + "." + size.Key.Text, reader.Context)))];
        if (bySize.Length == 0)
            reader.Context.Error(entry.Value, item, JobFaults.ExpectedText());
        return bySize.Length == 0 || bySize.Any(size => size.Terms.IsDefault) ? null : new Measure([.. bySize], entry.Value, item);
    }

    /// <summary>A length that must be there; zero after an error.</summary>
    public static Length Length(MapReader reader, string key, string example)
    {
        if (reader.Find(key) is null)
            reader.Context.Error(reader.Map, reader.Path, JobFaults.MissingKey(key, example));
        return reader.Read(key, reader.Context.AboveZero, Geometry.Length.Zero);
    }

    private static ImmutableArray<SeamTerm> Terms(JobNode node, string item, JobContext context)
    {
        if (context.AsText(node, item) is not TextNode text)
            return default;
        Reading<ImmutableArray<SeamTerm>> terms = TermText.Read(text.Text, context);
        if (terms.Fault is null)
            return terms.Value;
        context.Error(text, item, terms.Fault);
        return default;
    }
}
