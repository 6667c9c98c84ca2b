using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;
using Nestmark.Pieces;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Utilities;


namespace Nestmark.Tests.Nesting;

/// <summary>Judges a laid cloth by cutting it in thought, spreading the cloth out flat again and looking at what comes out; with NetTopologySuite alone.</summary>
/// <remarks>How each form is folded is written down here once more, from references/trade.md 4.1, apart from the program's own surfaces.</remarks>
internal static class SheetJudge
{
    // Turned points are rounded to whole micrometers by the program and not here.
    private const double Slack = 2;

    /// <summary>Every fault: a cut through a wrong number of layers or over a selvage, pieces that share cloth, wrong counts of left and right ones, halves that do not open to a whole, nap against nap.</summary>
    public static List<string> Faults(Cloth cloth, ImmutableArray<PieceOrder> orders, Marker marker)
    {
        List<string> faults = [];
        List<SheetImage> images = [];
        List<SheetLayer> layers = LayersOf(marker);
        for (int i = 0; i < marker.Placements.Length; i++)
            images.AddRange(ImagesOf(i, marker.Placements[i], layers, Shapes.ToNts(marker.Placements[i].Piece.CuttingLine), faults));
        JudgeOverlaps(marker, images, faults);
        foreach (PieceOrder order in orders.Where(order => !marker.Unplaced.Any(left => left.Piece == order.Piece.Name && left.Size == order.Size)))
            JudgeOrder(cloth, order, marker, images, faults);
        JudgeNap(cloth, orders, marker, images, faults);
        return faults;
    }

    /// <summary>Pieces that are cut over a flaw where they may not be; the lay begins one end allowance from the cut end, and the usable width one selvage from the edge.</summary>
    public static List<string> Spoiled(Cloth cloth, Marker marker)
    {
        List<string> faults = [];
        List<SheetLayer> layers = LayersOf(marker);
        AffineTransformation fromEdge = AffineTransformation.TranslationInstance(cloth.Ends.Micrometers, cloth.Selvage.Micrometers);
        for (int i = 0; i < marker.Placements.Length; i++)
        {
            Placement placement = marker.Placements[i];
            if (placement.Piece.Flaws == FlawTolerance.Anywhere)
                continue;
            NetTopologySuite.Geometries.Geometry sensitive = Shapes.ToNts(placement.Piece.Flaws == FlawTolerance.Allowances ? placement.Piece.SeamLine : placement.Piece.CuttingLine);
            foreach (SheetImage image in ImagesOf(i, placement, layers, sensitive, []))
            {
                NetTopologySuite.Geometries.Geometry onCloth = fromEdge.Transform(image.Shape);
                faults.AddRange(cloth.Flaws.Where(flaw => Shapes.ToNts(flaw.Area).Intersection(onCloth).Area > Slack * onCloth.Length).Select(flaw => $"{placement.Piece.Name} is cut over {flaw.Name}"));
            }
        }
        return faults;
    }

    internal static List<SheetLayer> LayersOf(Marker marker)
    {
        double width = marker.Surface.UsableWidth.Micrometers;
        double length = marker.LayLength.Micrometers + 1;
        double fold = marker.Surface.Form == LayForm.PartialFold ? marker.Surface.Bands[0].Depth.Micrometers : 0;
        double split = marker.Surface.Form == LayForm.Mixed ? marker.Surface.Bands[0].To!.Value.Micrometers : 0;
        double half = Math.Floor(width / 2);
        return marker.Surface.Form switch
        {
            LayForm.Open => [Layer(0, length, 0, width, Plain(0))],
            LayForm.Folded => [Layer(0, length, 0, half, Plain(half)), Layer(0, length, 0, half, Mirror(half))],
            LayForm.PartialFold => [Layer(0, length, 0, width - fold, Plain(fold)), Layer(0, length, 0, fold, Mirror(fold))],
            LayForm.DoubleFold =>
            [
                Layer(0, length, 0, half, Plain(width / 4)), Layer(0, length, 0, Math.Floor(width / 4), Mirror(width / 4)),
                Layer(0, length, Math.Floor(width / 4), half, Mirror(width * 5 / 4)),
            ],
            LayForm.CrosswiseFold => [Layer(0, length, 0, width, Plain(0)), Layer(0, length, 0, width, new(-1, 0, 0, 0, 1, 0))],
            LayForm.CrosswiseTurned => [Layer(0, length, 0, width, Plain(0)), Layer(0, length, 0, width, Mirror(width)) with { Sheet = 1 }],
            LayForm.Tubular => [Layer(0, length, 0, half, Plain(0)), Layer(0, length, 0, half, Mirror(width))],
            _ =>
            [
                Layer(0, split, 0, half, Plain(half)), Layer(0, split, 0, half, Mirror(half)),
                Layer(split, length, 0, width, Plain(0)),
            ],
        };
    }

    private static SheetLayer Layer(double minX, double maxX, double minY, double maxY, AffineTransformation toSheet) =>
        new(0, new Envelope(minX, maxX, minY, maxY), toSheet);

    private static AffineTransformation Plain(double shift) => new(1, 0, 0, 0, 1, shift);

    private static AffineTransformation Mirror(double about) => new(1, 0, 0, 0, -1, about);

    private static IEnumerable<SheetImage> ImagesOf(int index, Placement placement, List<SheetLayer> layers, NetTopologySuite.Geometries.Geometry shape, List<string> faults)
    {
        AffineTransformation onLay = OnLay(placement);
        NetTopologySuite.Geometries.Geometry cut = onLay.Transform(Shapes.ToNts(placement.Piece.CuttingLine));
        int found = 0;
        foreach (SheetLayer layer in layers)
        {
            Envelope room = layer.Region.Copy();
            if (cut.EnvelopeInternal.Intersection(room) is { IsNull: true } || cut.Intersection(new GeometryFactory().ToGeometry(room)).Area < Slack * cut.Length)
                continue;
            room.ExpandBy(Slack);
            if (!room.Contains(cut.EnvelopeInternal))
                faults.Add($"{placement.Piece.Name} lies partly beyond a layer");
            found++;
            AffineTransformation whole = new(onLay);
            whole.Compose(layer.ToSheet);
            double[] matrix = whole.MatrixEntries;
            yield return new SheetImage(index, layer.Sheet, whole.Transform(shape), whole.Determinant < 0, matrix[0]);
        }
        if (found != placement.Layers)
            faults.Add($"{placement.Piece.Name} is cut through {found} layers, not {placement.Layers}");
    }

    internal static AffineTransformation OnLay(Placement placement)
    {
        AffineTransformation transformation = new();
        if (placement.Turn.Facing == Nestmark.Geometry.Facing.Flipped)
            transformation.Scale(1, -1);
        double radians = placement.Turn.Angle.TotalDegrees * Math.PI / 180;
        transformation.Rotate(Math.Round(SineOf(radians), 15), Math.Round(SineOf(radians + Math.PI / 2), 15));
        transformation.Translate(placement.Offset.X, placement.Offset.Y);
        return transformation;
    }

#pragma warning disable RS0030 // The judge does not use the program's own angles.
    private static double SineOf(double radians) => Math.Sin(radians);
#pragma warning restore RS0030

    private static void JudgeOverlaps(Marker marker, List<SheetImage> images, List<string> faults)
    {
        for (int i = 0; i < images.Count; i++)
        {
            for (int j = i + 1; j < images.Count; j++)
            {
                if (images[i].Sheet == images[j].Sheet && images[i].Shape.EnvelopeInternal.Intersects(images[j].Shape.EnvelopeInternal)
                    && images[i].Shape.Intersection(images[j].Shape).Area > Slack * images[i].Shape.Length)
                    faults.Add($"{marker.Placements[images[i].Placement].Piece.Name} and {marker.Placements[images[j].Placement].Piece.Name} share cloth");
            }
        }
    }

    private static void JudgeOrder(Cloth cloth, PieceOrder order, Marker marker, List<SheetImage> images, List<string> faults)
    {
        List<SheetImage> own = [.. images.Where(image => marker.Placements[image.Placement].Piece.Name == order.Piece.Name && marker.Placements[image.Placement].Size == order.Size)];
        int wanted = order.Piece.Cut.FinishedCount * order.Garments;
        if (order.Piece.Cut.Kind == CutKind.OnFold)
        {
            JudgeWholes(order, marker, own, wanted, faults);
            return;
        }
        if (own.Count != wanted)
            faults.Add($"{order.Piece.Name} comes out {own.Count} times, not {wanted}");
        int mirrored = own.Count(image => image.IsMirrored);
        bool sidesMatter = cloth.Faces == ClothFaces.OneRightSide;
        if (sidesMatter && order.Piece.Cut.Kind == CutKind.Pairs && mirrored * 2 != wanted)
            faults.Add($"{order.Piece.Name} comes out {mirrored} times as mirror image, of {wanted}");
        if (sidesMatter && order.Piece.Cut.Kind == CutKind.Copies && own.All(image => marker.Placements[image.Placement].Layers == 1) && mirrored > 0)
            faults.Add($"{order.Piece.Name} comes out as mirror image");
    }

    /// <summary>Two images of a half make one whole of twice its area; an opened piece is whole already.</summary>
    private static void JudgeWholes(PieceOrder order, Marker marker, List<SheetImage> own, int wanted, List<string> faults)
    {
        double area = 2 * Shapes.ToNts(order.Piece.CuttingLine).Area;
        int wholes = 0;
        foreach (IGrouping<int, SheetImage> placed in own.GroupBy(image => image.Placement))
        {
            bool isHalf = marker.Placements[placed.Key].Contact == FoldContact.OnFold;
            List<NetTopologySuite.Geometries.Geometry> shapes = isHalf ? [Opened([.. placed.Select(image => image.Shape)], marker.Surface)] : [.. placed.Select(image => image.Shape)];
            wholes += shapes.Count;
            foreach (NetTopologySuite.Geometries.Geometry shape in shapes)
            {
                if (shape is not NetTopologySuite.Geometries.Polygon || Math.Abs(shape.Area - area) > Slack * shape.Length)
                    faults.Add($"{order.Piece.Name} does not open to a whole piece: {shape.GeometryType}");
            }
        }
        if (wholes != wanted)
            faults.Add($"{order.Piece.Name} comes out whole {wholes} times, not {wanted}");
    }

    /// <summary>Both images together; a tube is closed, so there one of them may have to be carried once round it.</summary>
    private static NetTopologySuite.Geometries.Geometry Opened(NetTopologySuite.Geometries.Geometry[] images, LaySurface surface)
    {
        NetTopologySuite.Geometries.Geometry union = images[0].Union(images[^1]);
        if (surface.Form != LayForm.Tubular || union is NetTopologySuite.Geometries.Polygon)
            return union;
        return images[0].Union(AffineTransformation.TranslationInstance(0, -surface.UsableWidth.Micrometers).Transform(images[^1]));
    }

    private static void JudgeNap(Cloth cloth, ImmutableArray<PieceOrder> orders, Marker marker, List<SheetImage> images, List<string> faults)
    {
        if (cloth.Nap == Nap.None)
            return;
        foreach (IGrouping<string, SheetImage> garment in images.GroupBy(image => cloth.Nap == Nap.BySize ? marker.Placements[image.Placement].Size : ""))
        {
            SheetImage[] followers = [.. garment.Where(image => FollowsNap(marker.Placements[image.Placement].Piece))];
            bool isWrong = cloth.Nap == Nap.OneWay ? followers.Any(image => image.GrainX <= 0) : followers.Select(image => image.GrainX > 0).Distinct().Count() > 1;
            if (isWrong)
                faults.Add($"pieces of size \"{garment.Key}\" lie against the nap");
        }
    }

    private static bool FollowsNap(Piece piece) => piece is { Grain: GrainRule.Along, Direction: DirectionRule.AsCloth };
}
