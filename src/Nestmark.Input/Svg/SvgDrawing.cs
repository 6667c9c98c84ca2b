using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Outlines;

namespace Nestmark.Input.Svg;

/// <summary>A loaded drawing at true size; gives pieces by id.</summary>
internal sealed class SvgDrawing : IDrawing
{
    private readonly SvgProblems _problems;
    private readonly AffineMap _toMillimeters;
    private readonly Dictionary<string, XElement> _byId;
    private readonly List<string> _ids;
    private readonly Dictionary<string, XElement> _doubled;

    private SvgDrawing(XElement root, AffineMap toMillimeters, SvgProblems problems)
    {
        Root = root;
        _problems = problems;
        _toMillimeters = toMillimeters;
        (_byId, _ids, _doubled) = Ids(root);
    }

    /// <summary>The svg element.</summary>
    public XElement Root { get; }

    /// <summary>The elements with an id; the first of several.</summary>
    public IReadOnlyDictionary<string, XElement> ById => _byId;

    /// <summary>The drawing, or <c>null</c> after a problem that spoils all of it.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="problems">Gets what is wrong with it.</param>
    /// <param name="settings">What the job says about it.</param>
    public static SvgDrawing? Load(ReadOnlyMemory<byte> bytes, SvgProblems problems, DrawingSettings settings)
    {
        if (SvgLoading.Load(bytes, problems) is not XElement root)
            return null;
        Fault? styles = root.Descendants().Where(element => element.Name.LocalName == "style")
            .Select(sheet => SvgStyles.FaultOfSheet(sheet.Value)).FirstOrDefault(fault => fault is not null);
        if (styles is not null)
            problems.Error(root, "", styles);
        AffineMap? scale = new SvgTrueSize(root, problems, settings).Map(new SvgDrawing(root, AffineMap.Identity, problems).Measured);
        return styles is null && scale is AffineMap map ? new SvgDrawing(root, map, problems) : null;
    }

    /// <summary>The ids that can be pieces: groups and shapes, in the order of the file.</summary>
    public IReadOnlyList<string> Names => _ids;

    /// <summary>None: a drawing in SVG has its sizes in its ids.</summary>
    public IReadOnlyList<string> SizesOf(string name) => [];

    /// <inheritdoc/>
    public Fault? FaultOf(PieceWish wish) => _byId.ContainsKey(wish.Name) ? null : SvgFaults.MissingId(wish.Name, Names);

    /// <inheritdoc/>
    public DrawnPiece? Piece(PieceWish wish)
    {
        string id = wish.Name;
        XElement element = _byId[id];
        if (_doubled.TryGetValue(id, out XElement? second))
        {
            _problems.Error(second, "#" + id, SvgFaults.DoubleId(id, ((IXmlLineInfo)element).LineNumber));
            return null;
        }
        SvgWalk walk = new(this, "#" + id, _problems);
        AffineMap flip = AffineMap.Scale(1, -1).After(_toMillimeters);
        if (walk.ShapesOf(element, flip) is not List<SvgShape> shapes)
            return null;
        DrawnPiece? drawn = new SvgPieceMaking(element, "#" + id, _problems).Make(shapes);
        return drawn is null ? null : drawn with { DrawnAt = LineOf(element) };
    }

    /// <summary>Width and height of what an element draws, under a map from user units to millimeters.</summary>
    private (double WidthMillimeters, double HeightMillimeters)? Measured(XElement element, AffineMap map)
    {
        SvgWalk walk = new(this, "", _problems);
        if (walk.ShapesOf(element, map) is not { Count: > 0 } shapes)
            return null;
        Box box = Box.Around([.. shapes.SelectMany(shape => shape.SubPaths).SelectMany(run => Flattening.Open(run.Segments))]);
        return (box.Width / 1000.0, box.Height / 1000.0);
    }

    /// <summary>As ":12"; empty when not known.</summary>
    private static string LineOf(IXmlLineInfo place) =>
        place.HasLineInfo() ? string.Create(CultureInfo.InvariantCulture, $":{place.LineNumber}") : "";

    private static (Dictionary<string, XElement> ById, List<string> Ids, Dictionary<string, XElement> Doubled) Ids(XElement root)
    {
        Dictionary<string, XElement> doubled = new(StringComparer.Ordinal);
        Dictionary<string, XElement> byId = new(StringComparer.Ordinal);
        List<string> ids = [];
        foreach (XElement element in root.DescendantsAndSelf())
        {
            if (element.Attribute("id")?.Value is not string id)
                continue;
            string name = element.Name.LocalName;
            bool isPiece = SvgShapes.IsShape(name) || name is "g" or "use" or "symbol" or "svg";
            if (!byId.TryAdd(id, element))
                doubled.TryAdd(id, element);
            else if (isPiece && element != root && SvgRoles.Of(element) == SvgRole.None)
                ids.Add(id);
        }
        AddLabels(root, byId, ids);
        return (byId, ids, doubled);
    }

    /// <summary>
    /// What has no id answers to the label that a drawing program gave it, where no id is the same; a shape without either to its number
    /// among all drawn shapes, as "shape-3".
    /// </summary>
    private static void AddLabels(XElement root, Dictionary<string, XElement> byId, List<string> names)
    {
        int number = 0;
        foreach (XElement element in root.Descendants().Where(element => element.Name.LocalName == "g" || SvgShapes.IsShape(element.Name.LocalName)))
        {
            string? label = element.Attributes().FirstOrDefault(attribute => attribute.Name.LocalName == "label" && attribute.Name.NamespaceName.Length > 0)?.Value;
            bool isDrawn = SvgShapes.IsShape(element.Name.LocalName) && !element.Ancestors().Any(outer => outer.Name.LocalName is "defs" or "symbol" or "clipPath" or "mask" or "marker" or "pattern");
            if (isDrawn && string.IsNullOrEmpty(label) && element.Attribute("id") is null && SvgRoles.Of(element) == SvgRole.None)
                label = string.Create(CultureInfo.InvariantCulture, $"shape-{++number}");
            else if (isDrawn)
                number++;
            if (label is { Length: > 0 } && byId.TryAdd(label, element))
                names.Add(label);
        }
    }
}
