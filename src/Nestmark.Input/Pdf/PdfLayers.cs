using System.Collections.Immutable;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Graphics;
using UglyToad.PdfPig.Tokens;

namespace Nestmark.Input.Pdf;

/// <summary>On which layers (optional content groups) lines are, and which layers the file switches off.</summary>
/// <remarks>ISO 32000-1, 8.11; a layer given to a whole form (its key OC) is not seen.</remarks>
internal sealed class PdfLayers
{
    private const int DeepestContent = 64;

    private readonly PdfDocument _document;
    private readonly HashSet<string> _hidden;

    public PdfLayers(PdfDocument document)
    {
        _document = document;
        _hidden = new HashSet<string>(Off(), StringComparer.Ordinal);
    }

    /// <summary>Whether the file switches a layer off.</summary>
    public bool IsHidden(string layer) => _hidden.Contains(layer);

    /// <summary>The layers of the paths that are on any, the outermost first.</summary>
    public Dictionary<PdfPath, ImmutableArray<string>> Of(Page page)
    {
        Dictionary<PdfPath, ImmutableArray<string>> layers = new(ReferenceEqualityComparer.Instance);
        foreach (MarkedContentElement content in page.GetMarkedContents())
            Add(content, [], layers, 0);
        return layers;
    }

    private void Add(MarkedContentElement content, ImmutableArray<string> outside, Dictionary<PdfPath, ImmutableArray<string>> layers, int depth)
    {
        ImmutableArray<string> inside = content.Tag == "OC" ? [.. outside, .. NamesOf(content.Properties, 0)] : outside;
        foreach (PdfPath path in content.Paths)
            layers[path] = inside;
        if (depth == DeepestContent)
            return;
        foreach (MarkedContentElement child in content.Children)
            Add(child, inside, layers, depth + 1);
    }

    /// <summary>The name of a group, or those of the groups that a membership dictionary lists.</summary>
    private IEnumerable<string> NamesOf(IToken? token, int depth)
    {
        if (depth > 3)
            return [];
        return Resolved(token) switch
        {
            ArrayToken array => array.Data.SelectMany(item => NamesOf(item, depth + 1)),
            DictionaryToken group when group.TryGet(NameToken.Create("OCGs"), out IToken members) => NamesOf(members, depth + 1),
            DictionaryToken group when group.TryGet(NameToken.Name, out IToken name) => TextOf(Resolved(name)) is { Length: > 0 } text ? [text] : [],
            _ => [],
        };
    }

    private IEnumerable<string> Off()
    {
        DictionaryToken catalog = _document.Structure.Catalog.CatalogDictionary;
        return Part(Part(catalog, "OCProperties"), "D") is DictionaryToken settings && settings.TryGet(NameToken.Create("OFF"), out IToken off) ? NamesOf(off, 0) : [];
    }

    private DictionaryToken? Part(DictionaryToken? dictionary, string key) =>
        dictionary is not null && dictionary.TryGet(NameToken.Create(key), out IToken part) ? Resolved(part) as DictionaryToken : null;

    private IToken? Resolved(IToken? token) => token is IndirectReferenceToken reference ? _document.Structure.GetObject(reference.Data)?.Data : token;

    private static string TextOf(IToken? token) => token switch
    {
        StringToken text => text.Data,
        HexToken hex => hex.Data,
        NameToken name => name.Data,
        _ => "",
    };
}
