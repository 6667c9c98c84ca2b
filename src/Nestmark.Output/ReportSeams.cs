using System.Text.Json;
using Nestmark.Pieces.Seams;
using Nestmark.Yardage;
using Nestmark.Yardage.Seams;

namespace Nestmark.Output;

/// <summary>The seams of a job in report.json: lengths in millimeters to the micrometer.</summary>
internal static class ReportSeams
{
    /// <summary>Writes the key seams; nothing for a job without seams.</summary>
    public static void Write(Utf8JsonWriter json, Job job)
    {
        if (job.Seams.IsEmpty)
            return;
        json.WriteStartArray("seams");
        foreach (SeamReport report in SeamReports.Of(job))
            Write(json, report);
        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, SeamReport report)
    {
        SeamWalk walk = report.Walk;
        json.WriteStartObject();
        json.WriteString("name", report.Seam.Seam.Name);
        json.WriteString("size", report.Size);
        json.WriteString("first", walk.First);
        json.WriteNumber("first_mm", walk.FirstLength.Micrometers / 1000m);
        json.WriteString("second", walk.Second);
        json.WriteNumber("second_mm", walk.SecondLength.Micrometers / 1000m);
        json.WriteNumber("takenUp_mm", walk.TakenUp.Micrometers / 1000m);
        json.WriteNumber("difference_mm", walk.Difference.Micrometers / 1000m);
        json.WriteNumber("ratio", Math.Round(walk.Ratio, 6));
        json.WriteString("verdict", walk.Verdict switch { SeamVerdict.Meets => "meets", SeamVerdict.Near => "near", _ => "apart" });
        if (report.Before is { } before)
            json.WriteNumber("differenceBefore_mm", before.Difference.Micrometers / 1000m);
        json.WriteStartArray("notches");
        foreach (NotchMeeting meeting in walk.Meetings)
            Write(json, meeting);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, NotchMeeting meeting)
    {
        json.WriteStartObject();
        json.WriteNumber("first_mm", Rounded(meeting.First.AlongMillimeters));
        json.WriteNumber("second_mm", Rounded(meeting.Second.AlongMillimeters));
        json.WriteNumber("apart_mm", Rounded(meeting.ApartMillimeters));
        json.WriteEndObject();
    }

    private static decimal Rounded(double millimeters) => Math.Round((decimal)millimeters, 3);
}
