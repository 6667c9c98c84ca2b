using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Input.Yaml;

namespace Nestmark.Input.Alterations;

/// <summary>Reads the key alter: a list of alterations, each a map with a verb that names its pieces.</summary>
internal static class AlterReader
{
    private static readonly (string Verb, Func<AlterEntry, AlterStep?> Read)[] Verbs =
    [
        ("widen", StripVerbs.Widen), ("narrow", StripVerbs.Narrow), ("lengthen", StripVerbs.Lengthen), ("shorten", StripVerbs.Shorten),
        ("raise", SeamVerbs.Raise), ("lower", SeamVerbs.Lower),
        ("spread", SlashVerbs.Spread), ("close", SlashVerbs.Close),
        ("move", ShapeVerbs.Move), ("extend", ShapeVerbs.Extend), ("cut off", ShapeVerbs.CutOff), ("complete", ShapeVerbs.Complete),
        ("split", PartVerbs.Split), ("join", PartVerbs.Join),
        ("blend", BlendVerb.Read),
    ];

    /// <summary>The alterations in the order of the file; those with errors are left out.</summary>
    /// <param name="job">The whole file.</param>
    /// <param name="context">Its units and problems.</param>
    /// <param name="sizes">The sizes that entries may name.</param>
    public static ImmutableArray<AlterStep> Read(MapReader job, JobContext context, ImmutableArray<string> sizes)
    {
        if (job.Find("alter") is not { Value: not BrokenNode } entry)
            return [];
        if (entry.Value is not ListNode { Items.Length: > 0 } list)
        {
            context.Error(entry.Value, "alter", AlterFaults.ExpectedList());
            return [];
        }
        return [.. list.Items.Select((node, i) => One(node, "alter." + (i + 1).ToString(CultureInfo.InvariantCulture), context, sizes)).OfType<AlterStep>()];
    }

    private static AlterStep? One(JobNode node, string path, JobContext context, ImmutableArray<string> sizes)
    {
        if (context.AsMap(node, path) is not MapReader reader)
            return null;
        string[] found = [.. Verbs.Select(verb => verb.Verb).Where(verb => reader.Map.Entries.Any(entry => entry.Key.Text == verb))];
        if (found.Length != 1)
        {
            context.Error(node, path, found.Length == 0 ? AlterFaults.NoVerb([.. Verbs.Select(verb => verb.Verb)]) : AlterFaults.SeveralVerbs(found[0], found[1]));
            return null;
        }
        int problems = context.Problems.All.Count;
        reader.Find(found[0]);
        AlterStep? step = Verbs.First(verb => verb.Verb == found[0]).Read(new AlterEntry(reader, found[0], sizes));
        reader.RefuseTheRest();
        return context.Problems.All.Count == problems ? step : null;
    }
}
