namespace Nestmark.Yardage;

/// <summary>Notes of a plan as people read them, the same in every output.</summary>
public static class NoteWords
{
    /// <summary>What the note says and what to do. One on a drawing begins with its place there; one on the job file names its piece or cloth itself.</summary>
    /// <param name="job">The job that was planned.</param>
    /// <param name="note">One of its notes.</param>
    public static string Of(Job job, Problem note)
    {
        string file = Path.GetFileName(note.Where.File);
        return file == job.Source
            ? (note.What + " " + note.Hint).TrimEnd()
            : (note with { Where = note.Where with { File = file } }).ToString();
    }
}
