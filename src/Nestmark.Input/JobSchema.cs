namespace Nestmark.Input;

/// <summary>The published JSON Schema (draft 2020-12) of the job file, for editors and other programs.</summary>
/// <remarks>The reader does not use it; tests hold the two together. Names, cross references and drawings are beyond it.</remarks>
public static class JobSchema
{
    /// <summary>The schema's text.</summary>
    public static string Text { get; } = Load();

    private static string Load()
    {
        using Stream stream = typeof(JobSchema).Assembly.GetManifestResourceStream("job.schema.json")!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd();
    }
}
