using System.Text;
using System.Xml;
using Nestmark.Geometry;
using Nestmark.Output.Fonts;
using Nestmark.Output.Patterns;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>
/// The pieces of a job as one SVG drawing at true size, one below the other. Each is a group named "front-M", with its seam line as outline,
/// as job files read it; where an allowance was added the cutting line stands in a group of its own, "front-M-cut".
/// </summary>
/// <remarks>Coordinates have three decimals of a millimeter, so nothing is lost.</remarks>
public static class PiecesSvg
{
    private const long BetweenMicrometers = 20_000;

    /// <summary>The file's bytes: grainlines along x, y downward as SVG wants it.</summary>
    public static byte[] Write(Job job)
    {
        BlockNames names = new(job.Pieces.Select(piece => piece.Piece));
        Box[] boxes = [.. job.Pieces.Select(piece => piece.Piece.CuttingLine.Bounds)];
        long width = boxes.Select(box => box.Width).DefaultIfEmpty().Max() + 2 * BetweenMicrometers;
        long height = boxes.Sum(box => box.Height + BetweenMicrometers) + BetweenMicrometers;
        using MemoryStream file = new();
        XmlWriterSettings settings = new() { Indent = true, NewLineChars = "\n", Encoding = new UTF8Encoding(false) };
        using (XmlWriter xml = XmlWriter.Create(file, settings))
        {
            xml.WriteStartElement("svg", SvgPiece.Namespace);
            xml.WriteAttributeString("width", SvgPiece.Number(width) + "mm");
            xml.WriteAttributeString("height", SvgPiece.Number(height) + "mm");
            xml.WriteAttributeString("viewBox", $"0 0 {SvgPiece.Number(width)} {SvgPiece.Number(height)}");
            xml.WriteElementString("title", SvgPiece.Namespace, CleanText.OneLine(job.Title));
            xml.WriteElementString("metadata", SvgPiece.Namespace, JobOrigin.Of(job));
            long top = BetweenMicrometers;
            for (int i = 0; i < boxes.Length; i++)
            {
                Piece piece = job.Pieces[i].Piece;
                new SvgPiece(xml, BetweenMicrometers - boxes[i].MinX, top + boxes[i].MaxY).Write(piece, names.Of(piece));
                top += boxes[i].Height + BetweenMicrometers;
            }
            xml.WriteEndElement();
        }
        file.WriteByte((byte)'\n');
        return file.ToArray();
    }
}
