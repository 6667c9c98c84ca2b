using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>The pieces of a plain drawing: its closed outlines that lie in no other, with what lies inside them.</summary>
internal sealed class DxfPlainPieces(DxfContent content, DxfProblems problems)
{
    private const long MostWork = 100_000_000;
    private const long ReachMicrometers = 3_000;
    private readonly List<Root> _roots = [];
    private readonly Dictionary<CurveSegment, int> _lines = new(ReferenceEqualityComparer.Instance);
    private long _work;

    /// <summary>The pieces in the order of the file.</summary>
    /// <param name="unitMillimeters">Millimeters in a unit of the drawing.</param>
    public List<DxfPiece> Read(double unitMillimeters)
    {
        List<DxfGroup> groups = Groups(AffineMap.Scale(unitMillimeters, unitMillimeters));
        List<(DxfRing Ring, DxfGroup Group, string Layer)> rings = [];
        List<(DxfEntity Entity, DxfGroup Group)> rest = [];
        foreach (DxfGroup group in groups)
            Split(group, rings, rest);
        FindRoots(rings);
        foreach ((DxfEntity entity, DxfGroup group) in rest)
            Give(entity, group);
        if (_work > MostWork)
            problems.Error(0, "", DxfFaults.TooMuch("lines than can be sorted by piece"));
        return Named();
    }

    private List<DxfGroup> Groups(AffineMap scale)
    {
        DxfUnfolding unfolding = new(content, problems);
        DxfGroup loose = new("", 0, []);
        List<DxfGroup> groups = [loose];
        foreach (DxfEntity entity in content.Entities)
        {
            DxfGroup group = entity is DxfInsert insert ? new DxfGroup(content.Block(insert.Block)?.IsInternal == false ? insert.Block : "", insert.Line, []) : loose;
            if (group != loose)
                groups.Add(group);
            unfolding.Unfold([entity], scale, "0", group.Entities);
        }
        return unfolding.IsFull ? [] : groups;
    }

    private void Split(DxfGroup group, List<(DxfRing, DxfGroup, string)> rings, List<(DxfEntity, DxfGroup)> rest)
    {
        List<DxfCurve> curves = [];
        foreach (DxfEntity entity in group.Entities)
        {
            bool mayBeOutline = RoleOf(entity.Layer) is SvgRole.None or SvgRole.Outline;
            if (entity is DxfCurve { } curve && mayBeOutline && DxfRings.IsWithinBounds(curve.Run))
                Remember(curve, curves);
            else
                rest.Add((entity, group));
        }
        foreach (IGrouping<string, DxfCurve> layer in curves.GroupBy(curve => curve.Layer))
        {
            int line = layer.First().Line;
            (List<SubPath> closed, List<SubPath> open) = DxfRings.Of(layer.Select(curve => curve.Run), fault => problems.Note(line, "", fault));
            List<DxfRing> kept = DxfRings.WithoutTwins(closed, out int twins);
            if (twins > 0)
                problems.Note(line, "", DxfFaults.Twins(twins));
            rings.AddRange(kept.Select(ring => (ring, group, layer.Key)));
            rest.AddRange(open.Select(run => ((DxfEntity)new DxfCurve("open line", layer.Key, line, run), group)));
        }
    }

    private void FindRoots(List<(DxfRing Ring, DxfGroup Group, string Layer)> rings)
    {
        bool saysOutlines = rings.Exists(one => RoleOf(one.Layer) == SvgRole.Outline);
        List<(DxfRing Ring, DxfGroup Group, string Layer)> inner = [];
        foreach ((DxfRing Ring, DxfGroup Group, string Layer) one in rings.OrderByDescending(one => one.Ring.Area))
        {
            bool mayBePiece = (!saysOutlines || RoleOf(one.Layer) == SvgRole.Outline) && _roots.Count < DxfLimits.MostPieces;
            if (one.Ring.Area > 2e6 && mayBePiece && Holding(one.Ring.Points[0], one.Group) is null)
                _roots.Add(new Root(one.Ring, one.Group, one.Layer, one.Group.Line > 0 ? one.Group.Line : _lines.GetValueOrDefault(one.Ring.Run.Segments[0]), []));
            else
                inner.Add(one);
        }
        foreach ((DxfRing ring, DxfGroup group, string layer) in inner)
            Give(new DxfCurve("closed line", layer, group.Line, ring.Run), group);
    }

    private void Remember(DxfCurve curve, List<DxfCurve> curves)
    {
        curves.Add(curve);
        _lines.TryAdd(curve.Run.Segments[0], curve.Line);
    }

    private void Give(DxfEntity entity, DxfGroup group)
    {
        if (PlaceOf(entity) is Point place && (Holding(place, group) ?? NearestTo(place)) is Root root)
            root.Inside.Add(entity);
        else
            content.LeftOut.Add(entity, "outside of outlines");
    }

    private static Point? PlaceOf(DxfEntity entity) => entity switch
    {
        DxfPoint point => point.Place.Rounded(),
        DxfText text => text.Place.Rounded(),
        DxfCurve curve => curve.Run.Segments[curve.Run.Segments.Length / 2].PointAt(0.5).Rounded(),
        _ => null,
    };

    /// <summary>The smallest root around a place; of its own block first.</summary>
    private Root? Holding(Point place, DxfGroup group)
    {
        Root? found = null;
        foreach (Root root in _roots)
        {
            Box box = root.Ring.Bounds;
            _work++;
            if (place.X < box.MinX || place.X > box.MaxX || place.Y < box.MinY || place.Y > box.MaxY)
                continue;
            _work += root.Ring.Points.Length;
            if (_work > MostWork)
                return null;
            bool isBetter = found is null || (root.Group == group) == (found.Group == group) || root.Group == group;
            if (isBetter && PointLocation.InRing(root.Ring.Points.AsSpan(), place) > 0)
                found = root;
        }
        return found;
    }

    /// <summary>The root whose outline runs within 3 mm.</summary>
    private Root? NearestTo(Point place)
    {
        foreach (Root root in _roots)
        {
            Box box = root.Ring.Bounds;
            _work++;
            if (place.X < box.MinX - ReachMicrometers || place.X > box.MaxX + ReachMicrometers || place.Y < box.MinY - ReachMicrometers || place.Y > box.MaxY + ReachMicrometers)
                continue;
            for (int i = 0; i + 1 < root.Ring.Points.Length; i++)
            {
                if (_work++ > MostWork)
                    return null;
                if ((PointLocation.NearestOnSegment(root.Ring.Points[i], root.Ring.Points[i + 1], place) - place).NormMicrometers <= ReachMicrometers)
                    return root;
            }
        }
        return null;
    }

    private List<DxfPiece> Named()
    {
        List<DxfPiece> pieces = [];
        HashSet<string> taken = [];
        foreach (Root root in _roots.OrderBy(root => root.Line))
        {
            string name = NameOf(root);
            for (int number = 2; !taken.Add(name); number++)
                name = string.Create(CultureInfo.InvariantCulture, $"{NameOf(root)}-{number}");
            DxfPiece piece = new(name, root.Line) { Kind = DxfKind.Plain, Block = root.Group.Block };
            piece.Boundary.Add(root.Ring.Run);
            foreach (DxfEntity entity in root.Inside)
                Sort(piece, entity);
            pieces.Add(piece);
        }
        return pieces;
    }

    /// <summary>A field PIECE NAME; else the block, if it holds one outline; else the tallest text inside; else the layer, if it holds one outline; else "piece".</summary>
    private string NameOf(Root root)
    {
        DxfText[] texts = [.. root.Inside.OfType<DxfText>().Where(text => text.Text.Length > 0)];
        string field = texts.Select(text => DxfTexts.FieldOf(text.Text)).FirstOrDefault(one => one?.Key is "PIECE NAME" or "NAME" or "PIECE")?.Value ?? "";
        if (field.Length > 0)
            return Cleaned(field);
        if (root.Group.Block.Length > 0 && _roots.Count(other => other.Group == root.Group) == 1)
            return Cleaned(root.Group.Block);
        DxfText? tallest = texts.Where(text => DxfTexts.FieldOf(text.Text) is null).MaxBy(text => text.HeightRatio);
        if (tallest is not null)
            return Cleaned(tallest.Text);
        bool ownsLayer = root.Layer != "0" && _roots.Count(other => other.Layer == root.Layer) == 1;
        return ownsLayer ? Cleaned(root.Layer) : "piece";
    }

    private static string Cleaned(string name)
    {
        string cleaned = new([.. name.Trim().Where(letter => letter != '#' && letter != '{' && letter != '}').Take(40)]);
        return cleaned.Length == 0 ? "piece" : cleaned;
    }

    private void Sort(DxfPiece piece, DxfEntity entity)
    {
        SvgRole role = RoleOf(entity.Layer);
        if (entity is DxfText text && DxfTexts.FieldOf(text.Text) is (string key, string value))
            piece.Fields.Add((key, value));
        else if (entity is DxfText note)
            piece.Fields.Add(("TEXT", note.Text));
        else if (entity is DxfPoint point && role is SvgRole.Notch)
            piece.Notches.Add(("", [point.Place]));
        else if (entity is DxfPoint corner && role is SvgRole.Corner)
            piece.TurnPoints.Add(corner.Place);
        else if (entity is DxfPoint mark)
            piece.Marks.Add(("", mark.Place));
        else if (entity is DxfCurve curve && !SortCurve(piece, curve.Run, role))
            content.LeftOut.Add(entity, $"on layer {Quantities.QuantityFaults.Shown(entity.Layer)}");
    }

    private static bool SortCurve(DxfPiece piece, SubPath run, SvgRole role)
    {
        if (role == SvgRole.Grain)
            piece.Grainlines.Add(run);
        else if (role == SvgRole.Fold)
            piece.MirrorLines.Add(run);
        else if (role == SvgRole.Notch)
            piece.Notches.Add(("", run.Form == SubPathForm.Closed ? [Middle(run)] : [run.Start, run.End]));
        else if (role == SvgRole.Mark)
            piece.Marks.Add(("", Middle(run)));
        else if (role is SvgRole.None or SvgRole.Line or SvgRole.Outline)
            piece.Lines.Add(("", run));
        else
            return false;
        return true;
    }

    private static CurvePoint Middle(SubPath run)
    {
        if (run.Segments is [ArcSegment arc])
            return arc.Center;
        Box box = Box.Around(Flattening.Open(run.Segments).AsSpan());
        return new CurvePoint((box.MinX + box.MaxX) / 2000.0, (box.MinY + box.MaxY) / 2000.0);
    }

    private static SvgRole RoleOf(string layer) => SvgRoles.OfWord(layer.Trim().ToLowerInvariant());

    private sealed record DxfGroup(string Block, int Line, List<DxfEntity> Entities);

    private sealed record Root(DxfRing Ring, DxfGroup Group, string Layer, int Line, List<DxfEntity> Inside);
}
