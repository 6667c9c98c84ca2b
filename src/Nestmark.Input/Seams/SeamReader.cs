using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage.Seams;

namespace Nestmark.Input.Seams;

/// <summary>Reads the keys seams and seam_tolerance.</summary>
/// <remarks>A tolerance of 3 mm unless the file or the seam says otherwise (references/trade.md 8).</remarks>
internal static class SeamReader
{
    private static readonly Length Loosest = Length.FromCentimeters(5);

    private static readonly (string, CornerRule)[] CornerWords = [("run on", CornerRule.RunOn), ("free", CornerRule.Free)];

    private static readonly (string, ZoneMarks)[] MarksWords = [("drawn", ZoneMarks.Drawn), ("none", ZoneMarks.None)];

    /// <summary>The seams in the order of the file; those with errors are left out.</summary>
    public static ImmutableArray<JobSeam> Read(MapReader job, JobContext context)
    {
        Length tolerance = job.Read("seam_tolerance", text => Tolerance(text, context), SeamWalking.UsualTolerance);
        if (job.Find("seams") is not MapEntry entry || entry.Value is BrokenNode)
            return [];
        if (entry.Value is not ListNode list)
        {
            context.Error(entry.Value, "seams", SeamFaults.ListForm());
            return [];
        }
        return [.. list.Items.Select((item, i) => One(item, string.Create(CultureInfo.InvariantCulture, $"seams[{i + 1}]"), tolerance, context)).OfType<JobSeam>()];
    }

    private static JobSeam? One(JobNode node, string path, Length usual, JobContext context)
    {
        if (context.AsMap(node, path) is not MapReader seam)
            return null;
        (ImmutableArray<SeamTerm> first, ImmutableArray<SeamTerm> second) = Join(seam, context);
        string name = seam.FindText("name")?.Text ?? "";
        Length tolerance = seam.Read("tolerance", text => Tolerance(text, context), usual);
        TakeUp? takeUp = TakeUpReader.Read(seam, context);
        CornerRule corners = seam.ReadWord("corners", CornerWords, CornerRule.RunOn);
        ZoneMarks marks = seam.ReadWord("marks", MarksWords, ZoneMarks.Drawn);
        seam.RefuseTheRest();
        if (first.IsDefault || second.IsDefault)
            return null;
        Seam read = new()
        {
            Name = name.Length > 0 ? name : $"{Text(first)} to {Text(second)}",
            First = first,
            Second = second,
            TakeUp = takeUp,
            Tolerance = tolerance,
            Corners = corners,
            Marks = marks,
        };
        return new JobSeam(read, context.PlaceOf(node, path));
    }

    private static string Text(ImmutableArray<SeamTerm> terms) => string.Join(" + ", terms.Select(term => term.Text));

    private static (ImmutableArray<SeamTerm> First, ImmutableArray<SeamTerm> Second) Join(MapReader seam, JobContext context)
    {
        if (seam.Find("join") is not MapEntry entry)
            context.Error(seam.Map, seam.Path, JobFaults.MissingKey("join", "join: [front.B-C, back.B-C]"));
        else if (entry.Value is ListNode { Items: [TextNode first, TextNode second] })
            return (Side(first, seam.PathOf("join"), context), Side(second, seam.PathOf("join"), context));
        else if (entry.Value is not BrokenNode)
            context.Error(entry.Value, seam.PathOf("join"), SeamFaults.JoinForm());
        return (default, default);
    }

    private static ImmutableArray<SeamTerm> Side(TextNode text, string path, JobContext context)
    {
        Reading<ImmutableArray<SeamTerm>> terms = TermText.Read(text.Text, context);
        if (terms.Fault is null)
            return terms.Value;
        context.Error(text, path, terms.Fault);
        return default;
    }

    private static Reading<Length> Tolerance(string text, JobContext context)
    {
        Reading<Length> length = context.AboveZero(text);
        return length.Fault is null && length.Value > Loosest ? new(default, SeamFaults.ToleranceRange(text)) : length;
    }
}
