using System.Text;
using Nestmark.Geometry;
using Nestmark.Output.Patterns;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The pieces of a job as a pattern file in DXF, shaped after ASTM D6673: one block for each piece and size, millimeters.</summary>
/// <remarks>
/// Layers and texts: references/formats.md 1.3 to 1.5, from memory; to be checked against the standard. Only POLYLINE, LINE, POINT and TEXT are written,
/// in 7-bit ASCII. Coordinates have three decimals, so nothing is lost. Curves are written as the polylines that are cut, their corners as turn points.
/// A text exactly at a notch, at a mark or at the start of a line is its label; that is our own custom. Letters of corners begin anew at the lowest-left corner of what is written.
/// </remarks>
public static class PiecesDxf
{
    /// <summary>The file's bytes. Each piece lies in its own frame: grainline along x, a fold edge on y = 0.</summary>
    public static byte[] Write(Job job)
    {
        DxfTags tags = new();
        tags.Add(999, JobOrigin.Of(job));
        Header(tags);
        BlockNames names = new(job.Pieces.Select(piece => piece.Piece));
        tags.Add(0, "SECTION");
        tags.Add(2, "BLOCKS");
        foreach (JobPiece piece in job.Pieces)
            DxfPieceBlock.Write(tags, piece, names.Of(piece.Piece));
        tags.Add(0, "ENDSEC");
        tags.Add(0, "SECTION");
        tags.Add(2, "ENTITIES");
        foreach (JobPiece piece in job.Pieces)
            Insert(tags, names.Of(piece.Piece));
        Style(tags, job);
        tags.Add(0, "ENDSEC");
        tags.Add(0, "EOF");
        return Encoding.ASCII.GetBytes(tags.Text);
    }

    private static void Header(DxfTags tags)
    {
        tags.Add(0, "SECTION");
        tags.Add(2, "HEADER");
        tags.Add(9, "$ACADVER");
        tags.Add(1, "AC1009");
        tags.Add(9, "$INSUNITS");
        tags.Add(70, "4");
        tags.Add(9, "$MEASUREMENT");
        tags.Add(70, "1");
        tags.Add(0, "ENDSEC");
    }

    private static void Insert(DxfTags tags, string block)
    {
        tags.Add(0, "INSERT");
        tags.Add(8, "1");
        tags.Add(2, block);
        tags.Place(10, Point.Origin);
    }

    private static void Style(DxfTags tags, Job job)
    {
        string[] lines =
        [
            "STYLE NAME: " + job.Title, "SAMPLE SIZE: " + (job.Sizes.IsEmpty ? "" : job.Sizes[0].Size), "UNITS: METRIC", "ASTM D6673",
        ];
        for (int i = 0; i < lines.Length; i++)
            tags.Label(1, new Point(0, -20_000 - 8_000 * i), lines[i]);
    }
}
