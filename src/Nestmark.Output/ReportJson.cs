using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The plan as JSON for other programs: lengths in millimeters to the micrometer, x along the cloth, y from the fold or the near selvage.</summary>
public static class ReportJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The file's bytes, UTF-8; the same plan gives the same bytes.</summary>
    /// <remarks>Shape: design 5.3. <c>seconds</c> is what the search was allowed, 0 when it stopped by steps.</remarks>
    public static byte[] Write(Plan plan)
    {
        using MemoryStream file = new();
        using (Utf8JsonWriter json = new(file, Options))
            WritePlan(json, plan);
        file.WriteByte((byte)'\n');
        return file.ToArray();
    }

    private static void WritePlan(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartObject();
        json.WriteNumber("nestmark", 1);
        WriteText(json, "title", plan.Job.Title);
        json.WriteNumber("seed", plan.Effort.Seed);
        json.WriteNumber("seconds", plan.Effort.Seconds ?? 0);
        json.WriteStartArray("problems");
        foreach (Problem problem in plan.Notes)
            WriteProblem(json, problem);
        json.WriteEndArray();
        json.WriteStartArray("cloths");
        foreach (ClothPlan cloth in plan.Cloths)
            WriteCloth(json, cloth);
        json.WriteEndArray();
        ReportSeams.Write(json, plan.Job);
        json.WriteBoolean("complete", plan.IsComplete);
        if (plan.Effort.Steps is long steps)
            json.WriteNumber("steps", steps);
        else
            json.WriteNull("steps");
        json.WriteNumber("threads", plan.Effort.Threads);
        json.WriteString("system", plan.Job.System == MeasureSystem.Metric ? "metric" : "imperial");
        WriteText(json, "source", plan.Job.Source);
        json.WriteString("origin", JobOrigin.Of(plan.Job));
        json.WriteEndObject();
    }

    private static void WriteProblem(Utf8JsonWriter json, Problem problem)
    {
        json.WriteStartObject();
        json.WriteString("severity", problem.Severity == Severity.Error ? "error" : "note");
        WriteText(json, "file", problem.Where.File);
        json.WriteNumber("line", problem.Where.Line);
        json.WriteNumber("column", problem.Where.Column);
        WriteText(json, "item", problem.Where.Item);
        WriteText(json, "what", problem.What);
        WriteText(json, "hint", problem.Hint);
        json.WriteEndObject();
    }

    private static void WriteCloth(Utf8JsonWriter json, ClothPlan cloth)
    {
        Marker marker = cloth.Marker;
        json.WriteStartObject();
        WriteText(json, "id", cloth.Cloth.Name);
        json.WriteString("lay", LayWords.Of(marker.Surface.Form));
        WriteLength(json, "usableWidth_mm", marker.Surface.UsableWidth);
        WriteLength(json, "layWidth_mm", marker.Surface.Depth);
        WriteLength(json, "layLength_mm", marker.LayLength);
        json.WriteNumber("efficiency", Math.Round(marker.EfficiencyRatio, 6));
        WritePurchase(json, cloth.Purchase);
        json.WriteStartArray("placements");
        foreach (Placement placement in marker.Placements)
            WritePlacement(json, placement);
        json.WriteEndArray();
        json.WriteStartArray("unplaced");
        foreach (Unplaced unplaced in marker.Unplaced)
            WriteUnplaced(json, unplaced);
        json.WriteEndArray();
        WriteLength(json, "width_mm", cloth.Cloth.Width);
        WriteLength(json, "selvage_mm", cloth.Cloth.Selvage);
        WriteLength(json, "ends_mm", cloth.Cloth.Ends);
        WriteLength(json, "gap_mm", cloth.Cloth.Gap);
        json.WriteString("nap", NapWord(cloth.Cloth.Nap));
        json.WriteEndObject();
    }

    private static void WritePurchase(Utf8JsonWriter json, Purchase purchase)
    {
        json.WriteStartObject("buy");
        WriteLength(json, "length_mm", purchase.ToBuy);
        WriteText(json, "text", purchase.Text);
        if (purchase.Cost is decimal cost)
            json.WriteNumber("cost", cost);
        else
            json.WriteNull("cost");
        WriteText(json, "currency", purchase.Currency);
        WriteText(json, "otherText", purchase.OtherText);
        WriteLength(json, "withEnds_mm", purchase.WithEnds);
        WriteLength(json, "beforeWash_mm", purchase.BeforeWash);
        json.WriteEndObject();
    }

    private static void WritePlacement(Utf8JsonWriter json, Placement placement)
    {
        Polygon outline = placement.CuttingLine;
        json.WriteStartObject();
        WriteText(json, "piece", placement.Piece.Name);
        WriteText(json, "size", placement.Size);
        json.WriteNumber("copy", placement.Copy);
        json.WriteNumber("layers", placement.Layers);
        json.WriteBoolean("onFold", placement.Contact == FoldContact.OnFold);
        json.WriteBoolean("flipped", placement.Turn.Facing == Facing.Flipped);
        json.WriteNumber("turn_deg", (decimal)placement.Turn.Angle.TotalDegrees);
        WritePoints(json, "outline_mm", outline.Outer);
        WriteLength(json, "x_mm", Length.FromMicrometers(placement.Offset.X));
        WriteLength(json, "y_mm", Length.FromMicrometers(placement.Offset.Y));
        WriteRings(json, "holes_mm", outline.Holes);
        WritePoints(json, "seamLine_mm", placement.Piece.SeamLine.Mapped(placement.Map).Outer);
        WriteSegment(json, "grainline_mm", placement, placement.Piece.Grainline);
        if (placement.Piece.FoldEdge is Segment fold)
            WriteSegment(json, "foldEdge_mm", placement, fold);
        else
            json.WriteNull("foldEdge_mm");
        json.WriteStartArray("notches");
        foreach (Notch notch in placement.Piece.Notches)
            WriteNotch(json, placement, notch);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteNotch(Utf8JsonWriter json, Placement placement, Notch notch)
    {
        json.WriteStartObject();
        WriteText(json, "name", notch.Name);
        json.WritePropertyName("cut_mm");
        WritePoint(json, placement.Map(notch.OnCuttingLine));
        json.WritePropertyName("seam_mm");
        WritePoint(json, placement.Map(notch.OnSeamLine));
        json.WriteEndObject();
    }

    private static void WriteUnplaced(Utf8JsonWriter json, Unplaced unplaced)
    {
        json.WriteStartObject();
        WriteText(json, "piece", unplaced.Piece);
        WriteText(json, "reason", unplaced.Reason);
        WriteText(json, "size", unplaced.Size);
        json.WriteEndObject();
    }

    private static string NapWord(Nap nap) => nap switch
    {
        Nap.OneWay => "one-way",
        Nap.BySize => "by-size",
        _ => "none",
    };

    // A decimal writes whole micrometers exactly; a double may not.
    private static decimal Millimeters(long micrometers) => micrometers / 1000m;

    private static void WriteLength(Utf8JsonWriter json, string key, Length length) => json.WriteNumber(key, Millimeters(length.Micrometers));

    private static void WriteSegment(Utf8JsonWriter json, string key, Placement placement, Segment segment) =>
        WritePoints(json, key, [placement.Map(segment.Start), placement.Map(segment.End)]);

    private static void WriteRings(Utf8JsonWriter json, string key, ImmutableArray<ImmutableArray<Point>> rings)
    {
        json.WriteStartArray(key);
        foreach (ImmutableArray<Point> ring in rings)
            WriteRing(json, ring);
        json.WriteEndArray();
    }

    private static void WritePoints(Utf8JsonWriter json, string key, ImmutableArray<Point> points)
    {
        json.WritePropertyName(key);
        WriteRing(json, points);
    }

    // One line a ring: a line for every number would make the file hard to read.
    private static void WriteRing(Utf8JsonWriter json, ImmutableArray<Point> points)
    {
        StringBuilder text = new("[");
        foreach (Point point in points)
            text.Append(text.Length > 1 ? ", " : "").Append(PointText(point));
        json.WriteRawValue(text.Append(']').ToString());
    }

    private static void WritePoint(Utf8JsonWriter json, Point point) => json.WriteRawValue(PointText(point));

    private static string PointText(Point point) =>
        string.Create(System.Globalization.CultureInfo.InvariantCulture, $"[{Millimeters(point.X)}, {Millimeters(point.Y)}]");

    // Halves of letters, which JSON cannot hold, become the replacement character; all else stays as it is.
    private static void WriteText(Utf8JsonWriter json, string key, string text) =>
        json.WriteString(key, string.Concat(text.EnumerateRunes().Select(rune => rune.ToString())));
}
