using System.Collections.Immutable;
using System.Text;
using Nestmark.Yardage;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Nestmark.Input.Yaml;

/// <summary>Reads a job file's text into nodes with places. Anchors, aliases, tags, tabs, second documents and too much nesting are problems.</summary>
internal sealed class YamlTree
{
    private const int DeepestNesting = 32;
    private const int MostNodes = 100_000;

    private readonly string _file;
    private readonly ProblemList _problems;
    private readonly HashSet<string> _aliases = new(StringComparer.Ordinal);
    private readonly Scanner _scanner;
    private readonly Parser _parser;
    private int _nodes;

    private YamlTree(string text, string file, ProblemList problems)
    {
        _file = file;
        _problems = problems;
        _scanner = new Scanner(new StringReader(text));
        _parser = new Parser(_scanner);
    }

    /// <summary>The root map, or <c>null</c> when the file has none; problems go to the list.</summary>
    public static MapNode? Read(ReadOnlySpan<byte> bytes, string file, ProblemList problems)
    {
        if (TextOf(bytes) is not string text)
        {
            problems.Add(Severity.Error, new Place(file, 0, 0, ""), YamlFaults.NotText());
            return null;
        }
        if (TabbedLine(text) is int line)
        {
            problems.Add(Severity.Error, new Place(file, line, 1, ""), YamlFaults.Tab());
            return null;
        }
        return new YamlTree(text, file, problems).Read();
    }

    private static string? TextOf(ReadOnlySpan<byte> bytes)
    {
        try
        {
            string text = new UTF8Encoding(false, true).GetString(bytes);
            return text.Contains('\0') ? null : text.TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            return null;
        }
    }

    private static int? TabbedLine(string text)
    {
        string[] lines = text.Split('\n');
        for (int i = 0; i < lines.Length; i++)
        {
            if (lines[i].TrimStart(' ').StartsWith('\t') && lines[i].Trim().Length > 0)
                return i + 1;
        }
        return null;
    }

    private MapNode? Read()
    {
        try
        {
            JobNode? root = null;
            while (_parser.MoveNext())
            {
                if (_parser.Current is DocumentStart && root is not null)
                    Error(_parser.Current, YamlFaults.SecondDocument());
                if (_parser.Current is NodeEvent or AnchorAlias)
                    root ??= Node(0);
            }
            return AsMap(root);
        }
        catch (InvalidOperationException)
        {
            // The scanner ends this way at some unclosed braces and brackets.
            Mark mark = _scanner.CurrentPosition;
            _problems.Add(Severity.Error, new Place(_file, Number(mark.Line), Number(mark.Column), ""), YamlFaults.Syntax("a brace, bracket or quote is not closed"));
            return null;
        }
        catch (YamlException trouble)
        {
            string what = trouble.InnerException?.Message ?? trouble.Message;
            _problems.Add(Severity.Error, new Place(_file, Number(trouble.Start.Line), Number(trouble.Start.Column), ""), YamlFaults.Syntax(what.TrimEnd('.')));
            return null;
        }
    }

    private MapNode? AsMap(JobNode? root)
    {
        if (root is null || root is TextNode { Text: "" })
            _problems.Add(Severity.Error, new Place(_file, 0, 0, ""), YamlFaults.Empty());
        else if (root is not (MapNode or BrokenNode))
            _problems.Error(_file, root, "", YamlFaults.NotAMap());
        return root as MapNode;
    }

    /// <summary>The node that the parser stands on; afterwards the parser stands on the node's last event.</summary>
    private JobNode Node(int depth)
    {
        ParsingEvent here = _parser.Current!;
        if (++_nodes == MostNodes)
            Error(here, YamlFaults.TooMany());
        if (here is NodeEvent { Anchor.IsEmpty: false } anchored)
            Error(here, YamlFaults.Anchor(anchored.Anchor.Value));
        if (here is NodeEvent { Tag.IsEmpty: false } tagged && tagged is not Scalar { IsQuotedImplicit: true })
            Error(here, YamlFaults.Tag(tagged.Tag.Value));
        if (here is AnchorAlias alias)
            return AliasHere(alias);
        if (here is Scalar scalar)
            return new TextNode(scalar.Value, Number(here.Start.Line), Number(here.Start.Column));
        if (depth == DeepestNesting || _nodes > MostNodes)
            return Skipped(here);
        return here is MappingStart ? Map(here, depth) : List(here, depth);
    }

    /// <summary>Each alias is reported where it first stands; the rest would only repeat it.</summary>
    private BrokenNode AliasHere(AnchorAlias alias)
    {
        if (_aliases.Add(alias.Value.Value))
            Error(alias, YamlFaults.Alias(alias.Value.Value));
        return new BrokenNode(Number(alias.Start.Line), Number(alias.Start.Column));
    }

    private ListNode List(ParsingEvent start, int depth)
    {
        ImmutableArray<JobNode>.Builder items = ImmutableArray.CreateBuilder<JobNode>();
        while (_parser.MoveNext() && _parser.Current is not SequenceEnd)
            items.Add(Node(depth + 1));
        return new ListNode(items.ToImmutable(), Number(start.Start.Line), Number(start.Start.Column));
    }

    private MapNode Map(ParsingEvent start, int depth)
    {
        ImmutableArray<MapEntry>.Builder entries = ImmutableArray.CreateBuilder<MapEntry>();
        Dictionary<string, TextNode> seen = new(StringComparer.Ordinal);
        while (_parser.MoveNext() && _parser.Current is not MappingEnd)
        {
            JobNode key = Node(depth + 1);
            _parser.MoveNext();
            JobNode value = Node(depth + 1);
            if (key is not TextNode word)
                ErrorUnlessBroken(key, YamlFaults.KeyIsNoText());
            else if (word.Text == "<<")
                _problems.Error(_file, key, "<<", YamlFaults.MergeKey());
            else if (!seen.TryAdd(word.Text, word))
                _problems.Error(_file, key, word.Text, YamlFaults.DuplicateKey(word.Text, seen[word.Text].Line));
            else
                entries.Add(new MapEntry(word, value));
        }
        return new MapNode(entries.ToImmutable(), Number(start.Start.Line), Number(start.Start.Column));
    }

    private BrokenNode Skipped(ParsingEvent start)
    {
        int open = 1;
        while (open > 0 && _parser.MoveNext())
        {
            if (_parser.Current is MappingStart or SequenceStart)
                open++;
            if (_parser.Current is MappingEnd or SequenceEnd)
                open--;
        }
        return Broken(start, YamlFaults.TooDeep());
    }

    private void ErrorUnlessBroken(JobNode node, Fault fault)
    {
        if (node is not BrokenNode)
            _problems.Error(_file, node, "", fault);
    }

    private BrokenNode Broken(ParsingEvent here, Fault fault)
    {
        Error(here, fault);
        return new BrokenNode(Number(here.Start.Line), Number(here.Start.Column));
    }

    private void Error(ParsingEvent here, Fault fault) =>
        _problems.Add(Severity.Error, new Place(_file, Number(here.Start.Line), Number(here.Start.Column), ""), fault);

    private static int Number(long mark) => int.CreateSaturating(mark);
}
