using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Alterations;
using Nestmark.Yardage;

namespace Nestmark.Input.Alterations;

/// <summary>One entry of the list alter, while it is read.</summary>
internal sealed class AlterEntry(MapReader reader, string verb, ImmutableArray<string> jobSizes)
{
    private static readonly (string, SideTruing)[] SidesWords =
        [("smooth", SideTruing.Smooth), ("straight", SideTruing.Straight), ("as cut", SideTruing.AsCut)];

    public MapReader Reader => reader;

    public JobContext Context => reader.Context;

    public string Verb => verb;

    /// <summary>The verb's own key, at which refusals point.</summary>
    public MapEntry VerbEntry => reader.Find(verb)!;

    public string Tape(Length length) => LengthWords.Tape(length, Context.System);

    /// <summary>The pieces that the verb names.</summary>
    public ImmutableArray<TextNode> Pieces() => Names(verb);

    /// <summary>The sizes that the entry is for; empty for all.</summary>
    public ImmutableArray<string> Sizes()
    {
        ImmutableArray<TextNode> sizes = Names("sizes");
        foreach (TextNode size in sizes.Where(size => !jobSizes.Contains(size.Text)))
            Context.Error(size, reader.PathOf("sizes"), AlterFaults.UnknownSize(size.Text, jobSizes));
        return [.. sizes.Select(size => size.Text)];
    }

    /// <summary>One text or a list of texts; empty without the key.</summary>
    public ImmutableArray<TextNode> Names(string key)
    {
        if (reader.Find(key) is not { Value: not BrokenNode } entry)
            return [];
        if (entry.Value is TextNode { Text.Length: > 0 } one)
            return [one];
        if (entry.Value is ListNode { Items.Length: > 0 } list && list.Items.All(item => item is TextNode { Text.Length: > 0 }))
            return [.. list.Items.Cast<TextNode>()];
        Context.Error(entry.Value, reader.PathOf(key), AlterFaults.ExpectedNames());
        return [];
    }

    /// <summary>The amount; above zero. Reported where it is missing.</summary>
    public Length By() => Required("by", "by: 2 with the amount") ? reader.Read("by", Context.AboveZero, Length.Zero) : Length.Zero;

    public bool Required(string key, string example)
    {
        if (reader.Find(key) is not null)
            return true;
        Context.Error(reader.Map, reader.Path, JobFaults.MissingKey(key, example));
        return false;
    }

    public SideTruing Truing(SideTruing usual) => reader.ReadWord("sides", SidesWords, usual);

    /// <summary>The line under a key; <c>null</c> after a fault, which is reported.</summary>
    public AlterLine? Line(string key)
    {
        if (!Required(key, key + ": 20 from A, the title of a drawn line, or { from: C, to: 5 on A-B }"))
            return null;
        JobNode node = reader.Find(key)!.Value;
        if (node is MapNode map)
        {
            MapReader ends = new(map, reader.PathOf(key), Context);
            (AlterPlace? from, AlterPlace? to) = (Place(ends, "from"), Place(ends, "to"));
            ends.RefuseTheRest();
            return from is null || to is null ? null : new LineBetween(from, to);
        }
        if (node is TextNode)
            return reader.Read<AlterLine?>(key, text => Nullable(AlterTexts.Line(text, Context)), null);
        if (node is not BrokenNode)
            Context.Error(node, reader.PathOf(key), AlterFaults.LineForm());
        return null;
    }

    /// <summary>The text under a key as the user wrote it, for words; "a line" for a line between two places.</summary>
    public string LineWords(string key) => reader.Find(key)?.Value is TextNode text
        ? text.Text.Contains(" from ", StringComparison.Ordinal) ? text.Text : $"the line {text.Text}"
        : "a line between two places";

    public AlterPlace? Place(MapReader from, string key)
    {
        if (from.Find(key) is null)
        {
            Context.Error(from.Map, from.Path, JobFaults.MissingKey(key, key + ": C or " + key + ": 5 on A-B"));
            return null;
        }
        return from.Read<AlterPlace?>(key, text => Nullable(AlterTexts.Place(text, Context)), null);
    }

    public string Edge(string key) => Required(key, key + ": A-B") ? reader.Read(key, AlterTexts.EdgeName, "") : "";

    private static Reading<T?> Nullable<T>(Reading<T> reading)
        where T : class => new(reading.Value, reading.Fault);
}
