using System.Collections.Immutable;
using System.Xml.Linq;
using Nestmark.Geometry.Curves;
using Nestmark.Yardage;

namespace Nestmark.Input.Svg;

/// <summary>Unfolds an element into its shapes: groups, transforms, use and symbol, nested svg.</summary>
internal sealed class SvgWalk(SvgDrawing drawing, string item, SvgProblems problems)
{
    private readonly List<SvgShape> _shapes = [];
    private readonly Stack<Visit> _visits = new();
    private int _instances;
    private bool _isBroken;

    /// <summary>The shapes of an element in millimeters, in drawing order; <c>null</c> after problems.</summary>
    public List<SvgShape>? ShapesOf(XElement element, AffineMap rootMap)
    {
        AffineMap map = rootMap;
        foreach (XElement ancestor in element.Ancestors().Reverse())
        {
            if (SvgStyles.IsHidden(ancestor))
                Fail(element, SvgFaults.Hidden());
            if (ancestor.Name.LocalName == "symbol" && ancestor.Attribute("viewBox") is not null)
                Fail(element, SvgFaults.SymbolScale());
            map = MapInside(ancestor, map) ?? map;
        }
        if (SvgStyles.IsHidden(element))
            Fail(element, SvgFaults.Hidden());
        _visits.Push(new Visit(element, map, SvgRole.None, []));
        while (!_isBroken && _visits.TryPop(out Visit? visit))
            Go(visit, isNamed: visit.Element == element && visit.Uses.IsEmpty);
        return _isBroken ? null : _shapes;
    }

    private void Go(Visit visit, bool isNamed)
    {
        XElement element = visit.Element;
        if (SvgStyles.IsHidden(element))
            return;
        if (++_instances > SvgLimits.MostInstances)
        {
            Fail(drawing.Root, SvgFaults.TooManyShapes());
            return;
        }
        SvgRole own = isNamed ? SvgRole.None : SvgRoles.Of(element);
        Visit here = visit with { Role = own == SvgRole.None ? visit.Role : own };
        string name = element.Name.LocalName;
        if (SvgShapes.IsShape(name))
            AddShape(here);
        else if (name == "use")
            GoIntoUse(here);
        else if (name is "g" or "a" or "switch" or "svg" || (name == "symbol" && isNamed) || (name is "defs" && isNamed))
            GoIntoChildren(here, MapInside(element, here.Map));
        else if (name is "image" or "foreignObject")
            problems.Add(Severity.Note, element, item, SvgFaults.NotRead(name));
    }

    private void GoIntoChildren(Visit visit, AffineMap? inside)
    {
        if (inside is not AffineMap map)
            return;
        foreach (XElement child in visit.Element.Elements().Reverse())
            _visits.Push(visit with { Element = child, Map = map });
    }

    private void AddShape(Visit visit)
    {
        if (OwnMap(visit.Element, visit.Map) is not AffineMap map)
            return;
        Reading<ImmutableArray<SubPath>> subPaths = SvgShapes.Read(visit.Element);
        if (subPaths.Fault is not null)
        {
            Fail(visit.Element, subPaths.Fault);
            return;
        }
        ImmutableArray<SubPath> mapped = [.. subPaths.Value.Select(subPath => subPath.Mapped(map))];
        if (mapped.Any(subPath => subPath.Segments.Any(segment => !segment.IsUsable)))
            Fail(visit.Element, SvgFaults.BeyondLimit());
        else if (!mapped.IsEmpty)
            _shapes.Add(new SvgShape(visit.Element, visit.Role, LabelOf(visit.Element), mapped));
    }

    private void GoIntoUse(Visit visit)
    {
        XElement use = visit.Element;
        string href = (use.Attribute("href") ?? use.Attribute(XName.Get("href", "http://www.w3.org/1999/xlink")))?.Value ?? "";
        if (!href.StartsWith('#') || !drawing.ById.TryGetValue(href[1..], out XElement? target))
        {
            Fail(use, SvgFaults.UseTarget(href));
            return;
        }
        if (visit.Uses.Contains(target) || use.Ancestors().Contains(target) || target == use)
            Fail(use, SvgFaults.UseCycle(href));
        else if (visit.Uses.Count == SvgLimits.DeepestUse)
            Fail(use, SvgFaults.UseDepth());
        else if (UseMap(use, visit.Map) is AffineMap map)
            PushTarget(visit with { Uses = visit.Uses.Add(target) }, target, map);
    }

    private void PushTarget(Visit visit, XElement target, AffineMap map)
    {
        if (target.Name.LocalName is not ("symbol" or "svg") || target.Attribute("viewBox") is null)
        {
            bool isSymbol = target.Name.LocalName == "symbol";
            if (isSymbol)
                GoIntoChildren(visit with { Element = target }, OwnMap(target, map));
            else
                _visits.Push(visit with { Element = target, Map = map });
            return;
        }
        XElement sized = visit.Element.Attribute("width") is not null ? visit.Element : target;
        Reading<double> width = SvgLengths.InUserUnits(sized, "width", -1);
        Reading<double> height = SvgLengths.InUserUnits(sized, "height", -1);
        Fault? fault = width.Fault ?? height.Fault ?? (width.Value <= 0 || height.Value <= 0 ? SvgFaults.SymbolScale() : null);
        Reading<AffineMap> fit = fault is null ? SvgScale.Fit(target, width.Value, height.Value) : new(default, fault);
        if (fit.Fault is not null)
            Fail(visit.Element, fit.Fault);
        else
            GoIntoChildren(visit with { Element = target }, map.After(fit.Value));
    }

    private AffineMap? UseMap(XElement use, AffineMap outside)
    {
        if (OwnMap(use, outside) is not AffineMap map)
            return null;
        Reading<double> x = SvgLengths.InUserUnits(use, "x", 0);
        Reading<double> y = SvgLengths.InUserUnits(use, "y", 0);
        if ((x.Fault ?? y.Fault) is Fault fault)
            return Fail(use, fault);
        return map.After(AffineMap.Shift(x.Value, y.Value));
    }

    /// <summary>The map that holds inside an element: its transform, and for a nested svg its place and viewBox.</summary>
    private AffineMap? MapInside(XElement element, AffineMap outside)
    {
        if (OwnMap(element, outside) is not AffineMap map)
            return null;
        if (element.Name.LocalName != "svg" || element.Parent is null)
            return map;
        Reading<double> x = SvgLengths.InUserUnits(element, "x", 0);
        Reading<double> y = SvgLengths.InUserUnits(element, "y", 0);
        Reading<double> width = SvgLengths.InUserUnits(element, "width", -1);
        Reading<double> height = SvgLengths.InUserUnits(element, "height", -1);
        bool needsSize = element.Attribute("viewBox") is not null;
        Fault? fault = x.Fault ?? y.Fault ?? width.Fault ?? height.Fault
            ?? (needsSize && (width.Value <= 0 || height.Value <= 0) ? SvgFaults.SymbolScale() : null);
        Reading<AffineMap> fit = fault is null ? SvgScale.Fit(element, width.Value, height.Value) : new(default, fault);
        return fit.Fault is null ? map.After(AffineMap.Shift(x.Value, y.Value)).After(fit.Value) : Fail(element, fit.Fault);
    }

    private AffineMap? OwnMap(XElement element, AffineMap outside)
    {
        Reading<AffineMap> own = SvgTransforms.Read(element.Attribute("transform")?.Value);
        Fault? fault = own.Fault ?? SvgStyles.FaultOf(element);
        return fault is null ? outside.After(own.Value) : Fail(element, fault);
    }

    private AffineMap? Fail(XElement about, Fault fault)
    {
        _isBroken = true;
        problems.Error(about, item, fault);
        return null;
    }

    private static string LabelOf(XElement element) =>
        element.Elements().FirstOrDefault(child => child.Name.LocalName == "title")?.Value.Trim() ?? "";

    private sealed record Visit(XElement Element, AffineMap Map, SvgRole Role, ImmutableList<XElement> Uses);
}
