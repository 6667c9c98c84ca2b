using Nestmark.Input.Quantities;

namespace Nestmark.Input.Yaml;

/// <summary>The messages about the form of a job file, before its keys are looked at.</summary>
internal static class YamlFaults
{
    public static Fault NotText() => new("The file is not UTF-8 text.", "Save the job file as plain text in UTF-8.");

    public static Fault Empty() => new("The file is empty.", "Start it with the line nestmark: 1, then title, units and pieces.");

    public static Fault NotAMap() => new("Expected keys and values, as title: Smock.", "Start the file with the line nestmark: 1.");

    public static Fault Tab() => new("Found a tab at the start of the line; YAML indents with spaces.", "Replace the tab by spaces.");

    public static Fault Syntax(string what) =>
        new($"The file cannot be read here: {QuantityFaults.Shown(what, 120)}.", "Check the indentation, brackets, quotes and colons on this line and the one before.");

    public static Fault Alias(string name) =>
        new($"Found the alias *{QuantityFaults.Shown(name)}; aliases are not used in job files.", "Write the value out.");

    public static Fault Anchor(string name) =>
        new($"Found the anchor &{QuantityFaults.Shown(name)}; anchors are not used in job files.", "Take it out and write repeated values out.");

    public static Fault Tag(string name) => new($"Found the tag {QuantityFaults.Shown(name)}; tags are not used in job files.", "Take it out.");

    public static Fault SecondDocument() => new("Found a second document after ---.", "Keep one job in a file.");

    public static Fault TooDeep() => new("Values are nested more than 32 levels deep.", "Take out brackets or indentation that is not needed.");

    public static Fault TooMany() => new("The file holds more than 100,000 values.", "Split the job.");

    public static Fault KeyIsNoText() => new("Expected a word as key.", "Write keys as plain words, as width: 140.");

    public static Fault DuplicateKey(string key, int line) =>
        new($"The key {QuantityFaults.Shown(key)} stands here a second time; first on line {line}.", "Keep one of the two.");

    public static Fault MergeKey() => new("Found <<; merged keys are not used in job files.", "Write the keys out.");
}
