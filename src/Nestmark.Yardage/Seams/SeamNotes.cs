using Nestmark.Geometry;
using Nestmark.Pieces.Seams;

namespace Nestmark.Yardage.Seams;

/// <summary>What the user should know about the seams: sides that do not meet, notches that miss each other, ends that do not go together.</summary>
internal static class SeamNotes
{
    /// <summary>Crossing edges that miss running on by more than this make a point or a dent that can be seen.</summary>
    /// <remarks>From memory: no published figure was found.</remarks>
    private const double PointDegrees = 15;

    /// <summary>The notes in the order of the file; each seam by size.</summary>
    public static IEnumerable<Problem> Of(Job job) => SeamReports.Of(job).SelectMany(report => Of(report, job.System));

    private static IEnumerable<Problem> Of(SeamReport report, MeasureSystem system)
    {
        if (report.Walk.Verdict == SeamVerdict.Apart)
            yield return Note(report, SeamWords.Apart(report, system), SeamWords.Correction(report, system));
        else
        {
            foreach (NotchMeeting meeting in report.Walk.Meetings.Where(meeting => Length.FromMillimeters(meeting.ApartMillimeters) > report.Seam.Seam.Tolerance))
                yield return NotchesApart(report, meeting, system);
        }
        if (report.Seam.Seam.Corners == CornerRule.Free)
            yield break;
        if (report.Walk.Verdict != SeamVerdict.Apart && report.Walk.Heights is { } heights && Apart(heights.First - heights.Second, report))
            yield return HeightsDiffer(report, heights.First, heights.Second, system);
        foreach (SeamEnd end in report.Walk.Ends)
        {
            if (report.Walk.Verdict == SeamVerdict.Apart && !report.Walk.SeemsHalved && Apart(end.Step, report))
                yield return Stepped(report, end, system);
            foreach (Problem note in OfEnd(report, end, system))
                yield return note;
        }
    }

    private static bool Apart(Length difference, SeamReport report) => Math.Abs(difference.Micrometers) > report.Seam.Seam.Tolerance.Micrometers;

    /// <summary>Hems or waists that do not come to the same place at one end of a seam.</summary>
    private static Problem Stepped(SeamReport report, SeamEnd end, MeasureSystem system)
    {
        bool firstReaches = end.Step > Length.Zero;
        (string further, string shorter) = firstReaches ? (end.First, end.Second) : (end.Second, end.First);
        string step = SeamWords.Small(end.Step, system);
        string from = end.PinnedAt is { } notch ? $"counted from the notch {SeamWords.Notch(notch, system)}" : "sewn from the other end on";
        return Note(
            report,
            $"At the end {end.First} / {end.Second} of the seam {report.Title} the edges {end.FirstCrossing} and {end.SecondCrossing} do not meet: {from}, {further} reaches {step} further.",
            $"Move the corner {further} back by {step} along the seam, or {shorter} out by as much.");
    }

    private static Problem HeightsDiffer(SeamReport report, Length first, Length second, MeasureSystem system)
    {
        SeamEnd end = report.Walk.Ends[^1];
        (SeamEnd start, string difference) = (report.Walk.Ends[0], SeamWords.Small(first - second, system));
        return Note(
            report,
            $"The seam {report.Title} meets, but between their level edges the pieces differ in height by {difference}: {start.First} to {end.First} is {SeamWords.Exact(first, system)} along the grain, "
                + $"{start.Second} to {end.Second} {SeamWords.Exact(second, system)}.",
            $"Let the level edge of the {(first < second ? "first" : "second")} piece curve up toward the seam, and lower its middle by {difference}; or slant both sides alike.");
    }

    private static Problem NotchesApart(SeamReport report, NotchMeeting meeting, MeasureSystem system)
    {
        string apart = SeamWords.Small(Length.FromMillimeters(meeting.ApartMillimeters), system);
        return Note(
            report,
            $"On the seam {report.Title} the notches {SeamWords.Notch(meeting.First, system)} and {SeamWords.Notch(meeting.Second, system)} come {apart} apart.",
            "Move one of them, or say where the ease lies with between.");
    }

    private static IEnumerable<Problem> OfEnd(SeamReport report, SeamEnd end, MeasureSystem system)
    {
        string where = $"At the end {end.First} / {end.Second} of the seam {report.Title}";
        if (end.FirstSeam != end.SecondSeam)
        {
            yield return Note(
                report,
                $"{where} the seam allowances are {SeamWords.Small(end.FirstSeam, system)} and {SeamWords.Small(end.SecondSeam, system)}.",
                "Make them alike, or match the pieces at the seam line and not at the cut edge.");
        }
        if (end.FirstHem != end.SecondHem)
        {
            yield return Note(
                report,
                $"{where} the allowance of {end.FirstCrossing} is {SeamWords.Small(end.FirstHem, system)} and that of {end.SecondCrossing} {SeamWords.Small(end.SecondHem, system)}.",
                "Make them alike, so that the cut edges run on across the seam.");
        }
        if (Math.Abs(end.PointDegrees) > PointDegrees)
        {
            yield return Note(
                report,
                FormattableString.Invariant($"{where} the crossing edges {end.FirstCrossing} and {end.SecondCrossing} make {(end.PointDegrees > 0 ? "a point" : "a dent")} of {Math.Abs(end.PointDegrees):0} degrees."),
                "True the corners so that the edges run on, or write corners: free if it is meant.");
        }
    }

    private static Problem Note(SeamReport report, string what, string hint) => new(Severity.Note, report.Seam.Where, what, hint);
}
