namespace Nestmark.Input.Yaml;

/// <summary>Takes the keys out of one map, one by one, and reports those that nobody took.</summary>
internal sealed class MapReader
{
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);

    public MapReader(MapNode map, string path, JobContext context)
    {
        Map = map;
        Path = path;
        Context = context;
    }

    /// <summary>The map.</summary>
    public MapNode Map { get; }

    /// <summary>The keys that lead to it, as "pieces.front"; empty for the whole file.</summary>
    public string Path { get; }

    /// <summary>The job it belongs to.</summary>
    public JobContext Context { get; }

    /// <summary>The path of one of its keys.</summary>
    public string PathOf(string key) => Path.Length == 0 ? key : Path + "." + key;

    /// <summary>The entry of a key, which is known from now on; or <c>null</c>.</summary>
    public MapEntry? Find(string key)
    {
        _known.Add(key);
        return Map.Entries.FirstOrDefault(entry => entry.Key.Text == key);
    }

    /// <summary>The text of a key, or <c>null</c> when it is not there or no text; the latter is reported.</summary>
    public TextNode? FindText(string key) => Find(key) is MapEntry entry ? Context.AsText(entry.Value, PathOf(key)) : null;

    /// <summary>Reads the text of a key; without the key, or with a fault (reported), gives the fallback.</summary>
    public T Read<T>(string key, Func<string, Reading<T>> read, T fallback)
    {
        if (FindText(key) is not TextNode text)
            return fallback;
        Reading<T> reading = read(text.Text);
        if (reading.Fault is null)
            return reading.Value!;
        Context.Error(text, PathOf(key), reading.Fault);
        return fallback;
    }

    /// <summary>Reads one word out of a few; without the key, or with another word (reported), gives the fallback.</summary>
    public T ReadWord<T>(string key, IReadOnlyList<(string Word, T Value)> words, T fallback)
    {
        return Read(key, Choose, fallback);

        Reading<T> Choose(string text)
        {
            foreach ((string word, T value) in words)
            {
                if (word == text)
                    return new(value, null);
            }
            return new(default, JobFaults.UnknownWord(text, [.. words.Select(pair => pair.Word)]));
        }
    }

    /// <summary>Reports every key that was not asked for.</summary>
    public void RefuseTheRest()
    {
        foreach (MapEntry entry in Map.Entries)
        {
            if (!_known.Contains(entry.Key.Text))
                Context.Error(entry.Key, PathOf(entry.Key.Text), FaultOf(entry));
        }
    }

    /// <summary>Inside braces a decimal comma splits a length in two: { seam: 1,5 cm } has a key "5 cm" without a value.</summary>
    private Fault FaultOf(MapEntry entry) => entry is { Key.Text: [>= '0' and <= '9', ..], Value: TextNode { Text: "" } }
        ? JobFaults.SplitByComma(entry.Key.Text)
        : JobFaults.UnknownKey(entry.Key.Text, [.. _known.Order(StringComparer.Ordinal)]);
}
