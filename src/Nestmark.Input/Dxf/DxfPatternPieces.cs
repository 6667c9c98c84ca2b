using Nestmark.Geometry;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>The pieces of a pattern file: one block each, sorted by layer.</summary>
/// <remarks>File shape: references/formats.md 1.4 and 1.5, from memory; to be checked against ASTM D6673.</remarks>
internal sealed class DxfPatternPieces(DxfContent content, DxfProblems problems)
{
    private readonly DxfUnfolding _unfolding = new(content, problems);

    /// <summary>Whether a file is a pattern: a block has a boundary on layer 1 and says its name, or the file names a standard and has a boundary.</summary>
    public static bool IsPattern(DxfContent content)
    {
        bool namesStandard = DialectOf(content).Length > 0;
        return content.Blocks.Any(block => IsPiece(block) && (namesStandard || block.Entities.OfType<DxfText>().Any(IsPieceName)));
    }

    /// <summary>The standard that the file names; empty without one.</summary>
    public static string DialectOf(DxfContent content)
    {
        IEnumerable<DxfText> texts = content.Entities.Concat(content.Blocks.SelectMany(block => block.Entities)).OfType<DxfText>();
        return texts.Select(text => DialectOf(text.Text)).FirstOrDefault(dialect => dialect.Length > 0, "");
    }

    private static string DialectOf(string text)
    {
        if (text.Contains("D6673", StringComparison.OrdinalIgnoreCase))
            return "ASTM D6673";
        return text.Contains("AAMA", StringComparison.OrdinalIgnoreCase) ? "ANSI/AAMA-292" : "";
    }

    /// <summary>The value of a text "KEY: value" of the style or else of any piece; empty without one.</summary>
    public static string StyleField(DxfContent content, string key)
    {
        IEnumerable<DxfText> texts = content.Entities.Concat(content.Blocks.SelectMany(block => block.Entities)).OfType<DxfText>();
        return texts.Select(text => DxfTexts.FieldOf(text.Text)).FirstOrDefault(field => field?.Key == key)?.Value ?? "";
    }

    /// <summary>The pieces in the order of the file.</summary>
    /// <param name="unitMillimeters">Millimeters in a unit of the drawing.</param>
    public List<DxfPiece> Read(double unitMillimeters)
    {
        AffineMap scale = AffineMap.Scale(unitMillimeters, unitMillimeters);
        Dictionary<string, DxfInsert> shown = content.Entities.OfType<DxfInsert>().DistinctBy(insert => insert.Block).ToDictionary(insert => insert.Block);
        List<DxfPiece> pieces = [];
        foreach (DxfBlock block in content.Blocks.Where(IsPiece).Take(DxfLimits.MostPieces))
        {
            DxfInsert? insert = shown.GetValueOrDefault(block.Name);
            AffineMap map = insert is null ? AffineMap.Shift(block.Base.XMillimeters, block.Base.YMillimeters) : insert.Map;
            DxfPiece piece = Sorted(block, _unfolding.Of(block, scale.After(map)));
            if (insert is null)
                problems.Note(block.Line, "#" + piece.Name, DxfFaults.NotInserted(piece.Name));
            pieces.Add(piece);
        }
        CountTheRest(pieces);
        return pieces;
    }

    private void CountTheRest(List<DxfPiece> pieces)
    {
        HashSet<string> blocks = [.. pieces.Select(piece => piece.Block)];
        foreach (DxfEntity entity in content.Entities)
        {
            if (entity is DxfInsert insert && !blocks.Contains(insert.Block))
                content.LeftOut.Add(entity, "of a block without boundary");
            else if (entity is not (DxfInsert or DxfText))
                content.LeftOut.Add(entity, "outside of pieces");
            else if (entity is DxfText text && DxfTexts.FieldOf(text.Text) is null && DialectOf(text.Text).Length == 0)
                content.LeftOut.Add(entity, "without a key");
        }
    }

    private static bool IsPiece(DxfBlock block) =>
        !block.IsInternal && block.Entities.Exists(entity => entity is DxfCurve && DxfLayers.NumberOf(entity.Layer) == DxfLayers.Boundary);

    private static bool IsPieceName(DxfText text) => DxfTexts.FieldOf(text.Text)?.Key == "PIECE NAME";

    private DxfPiece Sorted(DxfBlock block, List<DxfEntity> entities)
    {
        string Field(string key) => entities.OfType<DxfText>().Select(text => DxfTexts.FieldOf(text.Text)).FirstOrDefault(field => field?.Key == key)?.Value ?? "";
        string name = Field("PIECE NAME");
        DxfPiece piece = new(name.Length == 0 ? block.Name : name, block.Line) { Kind = DxfKind.Pattern, Block = block.Name, Size = Field("SIZE") };
        Dictionary<(string, Point), DxfText> labels = LabelsOf(entities);
        foreach (DxfEntity entity in entities)
        {
            if (entity is DxfText text)
                SortText(piece, text, labels);
            else if (DxfLayers.NumberOf(entity.Layer) is not int layer || !Sort(piece, entity, layer, LabelOf(entity)))
                content.LeftOut.Add(entity, Why(entity));
        }
        return piece;

        string LabelOf(DxfEntity entity) => labels.TryGetValue((entity.Layer, KeyPlace(entity)), out DxfText? label) ? label.Text : "";
    }

    private static string Why(DxfEntity entity) =>
        DxfLayers.NumberOf(entity.Layer) is int layer && DxfLayers.PassedOver(layer) is string known ? known : $"on layer {Quantities.QuantityFaults.Shown(entity.Layer)}";

    /// <summary>Texts that stand exactly at a point or at the start of a line, on its layer: our own writer's way to name marks.</summary>
    private static Dictionary<(string, Point), DxfText> LabelsOf(List<DxfEntity> entities)
    {
        HashSet<(string, Point)> places = [.. entities.Where(entity => entity is DxfPoint or DxfCurve).Select(entity => (entity.Layer, KeyPlace(entity)))];
        Dictionary<(string, Point), DxfText> labels = [];
        foreach (DxfText text in entities.OfType<DxfText>())
        {
            bool isOfMark = DxfLayers.NumberOf(text.Layer) is int layer && (DxfLayers.NotchName(layer) is not null || layer is DxfLayers.InternalLines or DxfLayers.DrillHoles);
            if (isOfMark && places.Contains((text.Layer, text.Place.Rounded())))
                labels.TryAdd((text.Layer, text.Place.Rounded()), text);
        }
        return labels;
    }

    private static Point KeyPlace(DxfEntity entity) => entity switch
    {
        DxfPoint point => point.Place.Rounded(),
        DxfCurve curve => curve.Run.Start.Rounded(),
        _ => default,
    };

    private void SortText(DxfPiece piece, DxfText text, Dictionary<(string, Point), DxfText> labels)
    {
        int? layer = DxfLayers.NumberOf(text.Layer);
        bool isLabel = labels.TryGetValue((text.Layer, text.Place.Rounded()), out DxfText? label) && ReferenceEquals(label, text);
        if (isLabel || text.Text.Length == 0)
            return;
        if (layer is DxfLayers.TurnPoints or DxfLayers.CurvePoints && DxfTexts.IsGradeMark(text.Text))
            content.GradeMarks++;
        else if (layer == DxfLayers.Annotation)
            piece.Fields.Add(("ANNOTATION", text.Text));
        else if (DxfTexts.FieldOf(text.Text) is (string key, string value))
            piece.Fields.Add((key, value));
        else if (layer == DxfLayers.Boundary)
            piece.Fields.Add(("ANNOTATION", text.Text));
        else
            content.LeftOut.Add(text, $"on layer {Quantities.QuantityFaults.Shown(text.Layer)}");
    }

    private static bool Sort(DxfPiece piece, DxfEntity entity, int layer, string label) => entity switch
    {
        DxfPoint point => SortPoint(piece, point.Place, layer, label),
        DxfCurve curve => SortCurve(piece, curve, layer, label),
        _ => false,
    };

    private static bool SortPoint(DxfPiece piece, CurvePoint place, int layer, string label)
    {
        if (layer == DxfLayers.TurnPoints)
            piece.TurnPoints.Add(place);
        else if (layer == DxfLayers.CurvePoints)
            piece.CurvePoints.Add(place);
        else if (DxfLayers.NotchName(layer) is string name)
            piece.Notches.Add((label.Length > 0 ? label : name, [place]));
        else if (layer is DxfLayers.DrillHoles or DxfLayers.InternalLines)
            piece.Marks.Add((label, place));
        else
            return false;
        return true;
    }

    private static bool SortCurve(DxfPiece piece, DxfCurve curve, int layer, string label)
    {
        if (layer == DxfLayers.Boundary)
            piece.Boundary.Add(curve.Run);
        else if (layer == DxfLayers.SewLines)
            piece.SewLines.Add(curve.Run);
        else if (layer == DxfLayers.Grainline)
            piece.Grainlines.Add(curve.Run);
        else if (layer == DxfLayers.MirrorLine)
            piece.MirrorLines.Add(curve.Run);
        else if (DxfLayers.NotchName(layer) is string name)
            piece.Notches.Add((label.Length > 0 ? label : name, [curve.Run.Start, curve.Run.End]));
        else if (DxfLayers.LineLabel(layer) is string kind)
            piece.Lines.Add((label.Length > 0 ? label : kind, curve.Run));
        else
            return false;
        piece.CutOuts += layer == DxfLayers.CutOuts ? 1 : 0;
        return true;
    }
}
