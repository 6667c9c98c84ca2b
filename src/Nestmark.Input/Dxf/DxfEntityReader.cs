using Nestmark.Geometry;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Svg;

namespace Nestmark.Input.Dxf;

/// <summary>Turns a record into what it draws.</summary>
/// <remarks>Codes: references/formats.md 2.4, from the DXF reference's pages that it names. Only flat drawings are read: the z direction may point up or down.</remarks>
internal static class DxfEntityReader
{
    /// <summary>The entities of a record, usually one; what is not read is counted.</summary>
    public static IEnumerable<DxfEntity> Read(DxfRecord record, DxfLeftOut leftOut, Action<Fault> note)
    {
        if (Flip(record) is not AffineMap flip)
        {
            leftOut.Add(record.Type + " in a tilted plane");
            return [];
        }
        List<DxfEntity> entities = record.Type switch
        {
            "POINT" => [new DxfPoint(record.Layer, record.Line, At(record, 10))],
            "TEXT" or "MTEXT" => [Text(record, flip)],
            "INSERT" => Insert(record, flip, leftOut),
            _ => Curve(record, flip, leftOut, note),
        };
        return record.Broken is null && record.Children.TrueForAll(child => child.Broken is null) ? entities : [];
    }

    /// <summary>The map from the entity's own plane: identity, or mirrored in x when its z points down; <c>null</c> for other planes.</summary>
    private static AffineMap? Flip(DxfRecord record)
    {
        (double x, double y, double z) = (record.Number(210, 0), record.Number(220, 0), record.Number(230, 1));
        if (Math.Abs(x) > 1e-6 || Math.Abs(y) > 1e-6 || z == 0)
            return null;
        return z > 0 ? AffineMap.Identity : AffineMap.Scale(-1, 1);
    }

    private static CurvePoint At(DxfRecord record, int code) => new(record.Needed(code), record.Needed(code + 10));

    private static DxfText Text(DxfRecord record, AffineMap flip)
    {
        string text = record.Type == "TEXT"
            ? record.Text(1, "")
            : string.Concat(record.Tags.Where(tag => tag.Code is 3 or 1).Select(tag => tag.Value));
        bool isAligned = record.Type == "TEXT" && (record.Whole(72, 0) != 0 || record.Whole(73, 0) != 0) && record.Tags.Exists(tag => tag.Code == 11);
        CurvePoint place = flip.Apply(At(record, isAligned ? 11 : 10));
        return new DxfText(record.Type, record.Layer, record.Line, DxfTexts.Plain(text, record.Type), place, record.Number(40, 1));
    }

    private static List<DxfEntity> Insert(DxfRecord record, AffineMap flip, DxfLeftOut leftOut)
    {
        AffineMap turn = AffineMap.Turn(Angle.FromDegrees(record.Number(50, 0) % 360));
        AffineMap scale = AffineMap.Scale(record.Number(41, 1), record.Number(42, 1));
        CurvePoint place = At(record, 10);
        AffineMap map = flip.After(AffineMap.Shift(place.XMillimeters, place.YMillimeters)).After(turn).After(scale);
        foreach (DxfRecord attribute in record.Children)
            leftOut.Add(attribute.Type + " of a block");
        if (Math.Abs(map.DeterminantRatio) < 1e-12)
        {
            leftOut.Add("INSERT scaled to nothing");
            return [];
        }
        return
        [
            new DxfInsert(record.Layer, record.Line, record.Text(2, "").Trim(), map)
            {
                Columns = Math.Max(1, record.Whole(70, 1)),
                Rows = Math.Max(1, record.Whole(71, 1)),
                ColumnStep = flip.After(turn).ApplyToVector(new CurvePoint(record.Number(44, 0), 0)),
                RowStep = flip.After(turn).ApplyToVector(new CurvePoint(0, record.Number(45, 0))),
            },
        ];
    }

    private static List<DxfEntity> Curve(DxfRecord record, AffineMap flip, DxfLeftOut leftOut, Action<Fault> note)
    {
        SubPath? run = record.Type switch
        {
            "LINE" => Straight(record),
            "CIRCLE" or "ARC" => DxfArcs.OfCenter(record)?.Mapped(flip),
            "ELLIPSE" => DxfArcs.OfEllipse(record),
            "LWPOLYLINE" => DxfPolylines.Light(record)?.Mapped(flip),
            "POLYLINE" => DxfPolylines.Heavy(record)?.Mapped(flip),
            "SPLINE" => DxfSplines.Read(record, note),
            _ => null,
        };
        if (run is not null)
            return [new DxfCurve(record.Type, record.Layer, record.Line, run)];
        if (record.Broken is null)
            leftOut.Add(record.Type);
        return [];
    }

    private static SubPath? Straight(DxfRecord record)
    {
        (CurvePoint start, CurvePoint end) = (At(record, 10), At(record, 11));
        return start == end ? null : new SubPath([new StraightSegment(start, end)], SubPathForm.Open);
    }
}
