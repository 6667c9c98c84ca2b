using System.Globalization;
using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Bench.Fuzz;

/// <summary><c>fuzz</c>: reads changed fixtures, one after the other, and says what throws, hangs or swells.</summary>
internal static class FuzzCommand
{
    private const int MostKept = 20;
    private static readonly string[] Readers = ["job", "svg", "dxf", "pdf"];

    /// <summary>Runs each reader and returns 0 when nothing was found.</summary>
    public static int Run(FuzzOptions options, TextWriter writer)
    {
        Directory.CreateDirectory(options.Folder);
        int found = 0;
        foreach (string reader in Readers.Where(reader => options.Only.Count == 0 || options.Only.Contains(reader)))
            found += RunReader(reader, options, writer);
        return found == 0 ? 0 : 1;
    }

    private static int RunReader(string reader, FuzzOptions options, TextWriter writer)
    {
        IReadOnlyList<FuzzSeed> seeds = FuzzCorpus.For(reader, options.Fixtures);
        if (seeds.Count == 0)
        {
            writer.WriteLine($"{reader}: no fixture to start from");
            return 0;
        }
        string current = Path.Combine(options.Folder, $"current.{reader}");
        using FuzzWatch watch = new(what =>
        {
            writer.WriteLine($"{reader}: an input {what}; it is in {current}");
            writer.Flush();
            Environment.Exit(1);
        });
        long count = 0;
        long read = 0;
        int failures = 0;
        Mutator mutator = new((ulong)options.Seed);
        while (watch.Minutes < options.Minutes)
        {
            FuzzSeed seed = seeds[mutator.Below(seeds.Count)];
            byte[] changed = mutator.Change(seed.Files[seed.Target], seeds);
            File.WriteAllBytes(current, changed);
            watch.Begin();
            string? failure = Failure(seed, changed, ref read);
            watch.End();
            count++;
            if (failure is not null && failures++ < MostKept)
                Keep(failure, seed, changed, Path.Combine(options.Folder, string.Create(CultureInfo.InvariantCulture, $"{reader}-{failures}.{reader}")), writer);
        }
        double minutes = watch.Minutes;
        writer.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{reader}: {count} inputs in {minutes:0.0} min, {count / minutes / 60:0} a second; {read} still gave a job; {failures} failures; slowest {watch.SlowestSeconds:0.00} s; at most {watch.PeakBytes >> 20} MB held"));
        return failures;
    }

    private static string? Failure(FuzzSeed seed, byte[] changed, ref long read)
    {
        try
        {
            JobReading reading = JobReader.Read(seed.JobFile, new FuzzFiles(seed, changed));
            read += reading.Job is null ? 0 : 1;
            bool hasErrors = reading.Problems.Any(problem => problem.Severity == Severity.Error);
            return reading.Job is null == hasErrors ? null : "no job without an error, or a job with one";
        }
        catch (Exception trouble)
        {
            return trouble.ToString();
        }
    }

    private static void Keep(string failure, FuzzSeed seed, byte[] changed, string kept, TextWriter writer)
    {
        File.WriteAllBytes(kept, changed);
        File.WriteAllText(kept + ".txt", $"job {seed.JobFile}\nfile {seed.Target}\n{failure}\n");
        writer.WriteLine($"{kept}: {failure.Split('\n')[0].Trim()}");
    }
}
