namespace Nestmark.Bench.Fuzz;

/// <summary>A job of the fixtures with the files it names, one of which is to be changed.</summary>
/// <param name="JobFile">Path of the job.</param>
/// <param name="Target">Path of the file that is changed.</param>
/// <param name="Files">Every file of the fixtures' folder that the job may read, by path.</param>
internal sealed record FuzzSeed(string JobFile, string Target, IReadOnlyDictionary<string, byte[]> Files);
