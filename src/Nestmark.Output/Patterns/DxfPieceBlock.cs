using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output.Patterns;

/// <summary>The block of one piece: what stands on which layer.</summary>
internal static class DxfPieceBlock
{
    private const double CornerCosine = 0.8660254;

    public static void Write(DxfTags tags, JobPiece jobPiece, string block)
    {
        Piece piece = jobPiece.Piece;
        tags.Add(0, "BLOCK");
        tags.Add(8, "1");
        tags.Add(2, block);
        tags.Add(70, "0");
        tags.Place(10, Point.Origin);
        Outlines(tags, piece);
        Marks(tags, piece);
        Texts(tags, jobPiece);
        tags.Add(0, "ENDBLK");
        tags.Add(8, "1");
    }

    private static void Outlines(DxfTags tags, Piece piece)
    {
        Ring(tags, 1, piece.CuttingLine.Outer);
        bool hasSeamLine = !piece.SeamLine.Outer.SequenceEqual(piece.CuttingLine.Outer);
        if (hasSeamLine)
            tags.Polyline(14, piece.SeamLine.Outer, DxfEnds.Closed);
        foreach (PieceCorner corner in piece.Corners)
            tags.Mark(2, corner.Place);
        if (piece.Corners.IsEmpty && hasSeamLine)
            tags.Mark(3, piece.SeamLine.Outer[0]);
        if (piece.FoldEdge is Segment fold)
            tags.Line(6, fold.Start, fold.End);
    }

    /// <summary>The boundary, with its corners as turn points; a line without corners gets one curve point, so that none is read into it.</summary>
    private static void Ring(DxfTags tags, int layer, IReadOnlyList<Point> ring)
    {
        tags.Polyline(layer, ring, DxfEnds.Closed);
        Point[] turns = [.. Enumerable.Range(0, ring.Count).Where(i => Turns(ring[(i + ring.Count - 1) % ring.Count], ring[i], ring[(i + 1) % ring.Count])).Select(i => ring[i])];
        foreach (Point turn in turns)
            tags.Mark(2, turn);
        if (turns.Length == 0)
            tags.Mark(3, ring[0]);
    }

    private static bool Turns(Point before, Point here, Point after)
    {
        (Point arriving, Point leaving) = (here - before, after - here);
        double cosine = ((double)arriving.X * leaving.X + (double)arriving.Y * leaving.Y) / (arriving.NormMicrometers * leaving.NormMicrometers);
        return cosine < CornerCosine;
    }

    private static void Marks(DxfTags tags, Piece piece)
    {
        tags.Line(7, piece.Grainline.Start, piece.Grainline.End);
        foreach (Notch notch in piece.Notches)
        {
            int layer = NotchLayer(notch.Name);
            tags.Mark(layer, notch.OnCuttingLine);
            if (layer == 4)
                tags.Label(layer, notch.OnCuttingLine, notch.Name);
        }
        foreach (PieceLine line in piece.Lines)
        {
            int layer = LineLayer(line.Label);
            tags.Polyline(layer, line.Points, DxfEnds.Open);
            if (layer == 8)
                tags.Label(layer, line.Points[0], line.Label);
        }
        foreach (PieceMark mark in piece.Marks)
        {
            tags.Mark(13, mark.Place);
            tags.Label(13, mark.Place, mark.Label);
        }
    }

    private static void Texts(DxfTags tags, JobPiece jobPiece)
    {
        Piece piece = jobPiece.Piece;
        string[] lines =
        [
            "PIECE NAME: " + piece.Name, piece.Size.Length == 0 ? "" : "SIZE: " + piece.Size,
            string.Create(CultureInfo.InvariantCulture, $"QUANTITY: {piece.Cut.FinishedCount}"),
            "MATERIAL: " + jobPiece.Cloth, $"ANNOTATION: cut {piece.Cut}",
        ];
        for (int i = 0; i < lines.Length; i++)
            tags.Label(1, piece.Grainline.Start + new Point(5_000, 5_000 + 7_000 * i), lines[i]);
    }

    private static int NotchLayer(string name) => name switch { "T" => 80, "castle" => 81, "check" => 82, "U" => 83, _ => 4 };

    private static int LineLayer(string label) => label switch { "stripe line" => 9, "plaid line" => 10, "cutout" => 11, _ => 8 };
}
