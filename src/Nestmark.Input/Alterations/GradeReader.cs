using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Yaml;
using Nestmark.Pieces.Alterations;

namespace Nestmark.Input.Alterations;

/// <summary>Reads the key grade: offsets of corners by size, counted from a base size.</summary>
internal static class GradeReader
{
    private static readonly (string, GradeBetween)[] BetweenWords = [("given", GradeBetween.Given), ("even", GradeBetween.Even)];

    /// <summary>The tables by piece, each with the place of its key; empty without the key or after some errors.</summary>
    public static ImmutableArray<(TextNode Piece, GradeTable Table)> Read(MapReader job, JobContext context)
    {
        if (job.Find("grade") is not MapEntry entry || context.AsMap(entry.Value, "grade") is not MapReader grade)
            return [];
        Require(grade, "base", "base: M with the size as drawn");
        Require(grade, "order", "order: [S, M, L] with every size from small to large");
        Require(grade, "pieces", "pieces: { front: { B: { S: [0, -1], L: [0, 1] } } }");
        string baseSize = grade.FindText("base")?.Text ?? "";
        ImmutableArray<string> order = [.. new AlterEntry(grade, "order", []).Names("order").Select(size => size.Text)];
        if (!order.IsEmpty && !order.Contains(baseSize))
            context.Error(entry.Value, "grade.order", AlterFaults.GradeBaseMissing(baseSize));
        GradeBetween between = grade.ReadWord("between", BetweenWords, GradeBetween.Given);
        MapReader? pieces = grade.Find("pieces") is MapEntry found ? context.AsMap(found.Value, "grade.pieces") : null;
        grade.RefuseTheRest();
        return pieces is null ? [] : [.. pieces.Map.Entries.Select(piece => (piece.Key, TableOf(piece, order, baseSize, between, context)))];
    }

    private static void Require(MapReader grade, string key, string example)
    {
        if (grade.Find(key) is null)
            grade.Context.Error(grade.Map, "grade", JobFaults.MissingKey(key, example));
    }

    private static GradeTable TableOf(MapEntry piece, ImmutableArray<string> order, string baseSize, GradeBetween between, JobContext context)
    {
        string path = "grade.pieces." + piece.Key.Text;
        MapReader? corners = context.AsMap(piece.Value, path);
        return new GradeTable(order, baseSize, corners is null ? [] : [.. corners.Map.Entries.Select(corner => Corner(corner, path, order, context))], between);
    }

    private static (string, ImmutableDictionary<string, CornerOffset>) Corner(MapEntry corner, string path, ImmutableArray<string> order, JobContext context)
    {
        if (AlterTexts.CornerLetter(corner.Key.Text).Fault is { } fault)
            context.Error(corner.Key, path, fault);
        ImmutableDictionary<string, CornerOffset>.Builder offsets = ImmutableDictionary.CreateBuilder<string, CornerOffset>(StringComparer.Ordinal);
        string item = path + "." + corner.Key.Text;
        foreach (MapEntry size in context.AsMap(corner.Value, item)?.Map.Entries ?? [])
        {
            if (!order.Contains(size.Key.Text))
                context.Error(size.Key, item, AlterFaults.UnknownSize(size.Key.Text, order));
            if (Offset(size.Value, item, context) is { } offset)
                offsets[size.Key.Text] = offset;
        }
        return (corner.Key.Text, offsets.ToImmutable());
    }

    private static CornerOffset? Offset(JobNode node, string item, JobContext context)
    {
        if (node is not ListNode { Items: [TextNode along, TextNode across] })
        {
            if (node is not BrokenNode)
                context.Error(node, item, AlterFaults.GradeForm());
            return null;
        }
        Length?[] lengths = [.. new[] { along, across }.Select(text => OneLength(text, item, context))];
        return lengths is [{ } first, { } second] ? new CornerOffset(first, second) : null;
    }

    private static Length? OneLength(TextNode text, string item, JobContext context)
    {
        Reading<Length> length = context.AnyLength(text.Text);
        if (length.Fault is null)
            return length.Value;
        context.Error(text, item, length.Fault);
        return null;
    }
}
