using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using PdfSharp.Pdf;
using PdfSharp.Pdf.Advanced;

namespace Nestmark.Output.Pdf;

/// <summary>Saves a document so that strict readers accept it and two runs give the same bytes.</summary>
/// <remarks>
/// The library (PDFsharp 6.2.4) leaves the checksum off its compressed streams, and draws font tags and document ids at random.
/// So streams are compressed here, and the random parts are overwritten by counted ones of the same length.
/// </remarks>
internal static partial class PdfRepairs
{
    /// <summary>The file's bytes. Nothing may be drawn on the document afterwards.</summary>
    public static byte[] Save(PdfDocument document)
    {
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
        foreach (PdfPage page in document.Pages)
            foreach (PdfItem item in page.Contents.Elements)
                Compress(item);
        using MemoryStream file = new();
        document.Save(file, closeStream: false);
        byte[] bytes = file.ToArray();
        Overwrite(bytes);
        return bytes;
    }

    private static void Compress(PdfItem item)
    {
        PdfDictionary? content = (item is PdfReference reference ? reference.Value : item) as PdfDictionary;
        if (content?.Stream is null || content.Elements.ContainsKey("/Filter"))
            return;
        using MemoryStream packed = new();
        using (ZLibStream zip = new(packed, CompressionLevel.Optimal, leaveOpen: true))
            zip.Write(content.Stream.Value);
        content.Stream.Value = packed.ToArray();
        content.Elements["/Filter"] = new PdfName("/FlateDecode");
        content.Elements["/Length"] = new PdfInteger((int)packed.Length);
    }

    private static void Overwrite(byte[] bytes)
    {
        string text = Encoding.Latin1.GetString(bytes);
        Dictionary<string, string> tags = [];
        foreach (Match match in SubsetTag().Matches(text))
        {
            string tag = match.Groups[2].Value;
            if (!tags.ContainsKey(tag))
                tags[tag] = "NESTM" + (char)('A' + tags.Count);
            Encoding.Latin1.GetBytes(tags[tag]).CopyTo(bytes, match.Groups[2].Index);
        }
        foreach (Match match in RandomId().Matches(text))
            Encoding.Latin1.GetBytes("00000000-0000-0000-0000-000000000000").CopyTo(bytes, match.Index + "uuid:".Length);
    }

    [GeneratedRegex("/(BaseFont|FontName)/([A-Z]{6})\\+")]
    private static partial Regex SubsetTag();

    [GeneratedRegex("uuid:[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")]
    private static partial Regex RandomId();
}
