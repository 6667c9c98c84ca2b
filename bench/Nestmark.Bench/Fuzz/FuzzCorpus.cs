namespace Nestmark.Bench.Fuzz;

/// <summary>The fixtures as starting points.</summary>
internal static class FuzzCorpus
{
    private const int LongestJobText = 1 << 20;

    /// <summary>Starting points for a reader: each job whose own text ("job") or a drawing of that extension is changed.</summary>
    public static IReadOnlyList<FuzzSeed> For(string reader, string folder)
    {
        List<FuzzSeed> seeds = [];
        foreach (string job in Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            if (new FileInfo(job).Length > LongestJobText)
                continue;
            string text = File.ReadAllText(job);
            Dictionary<string, byte[]> files = new(StringComparer.Ordinal) { [job] = File.ReadAllBytes(job) };
            foreach (string beside in Directory.GetFiles(Path.GetDirectoryName(job)!).Order(StringComparer.Ordinal))
            {
                if (beside != job && text.Contains(Path.GetFileName(beside), StringComparison.Ordinal))
                    files[beside] = File.ReadAllBytes(beside);
            }
            if (reader == "job")
                seeds.Add(new FuzzSeed(job, job, files));
            else
                seeds.AddRange(files.Keys.Where(file => file.EndsWith("." + reader, StringComparison.OrdinalIgnoreCase)).Order(StringComparer.Ordinal).Select(file => new FuzzSeed(job, file, files)));
        }
        return seeds;
    }
}
