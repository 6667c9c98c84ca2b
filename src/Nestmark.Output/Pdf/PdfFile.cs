using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Pdf;

/// <summary>Writes pages as one PDF file: true size, text as text, the same bytes every time.</summary>
internal static class PdfFile
{
    /// <summary>PDF units in a millimeter; 1 unit is 1/72 in. ISO 32000-1, 8.3.2.3.</summary>
    public const double UnitsPerMillimeter = 72 / 25.4;

    // Nothing in the file may depend on when it was written.
    private static readonly DateTime FixedDate = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>The file's bytes.</summary>
    /// <param name="sheets">One page or more.</param>
    /// <param name="title">Shown in the reader's title line.</param>
    /// <param name="origin">Tag by which the program knows its own files.</param>
    public static byte[] Write(IReadOnlyList<PdfSheet> sheets, string title, string origin)
    {
        PrintFontResolver.Install();
        using PdfDocument document = new();
        Describe(document, CleanText.OneLine(title), origin);
        foreach (PdfSheet sheet in sheets)
        {
            PdfPage page = document.AddPage();
            page.Width = XUnit.FromPoint(sheet.WidthMillimeters * UnitsPerMillimeter);
            page.Height = XUnit.FromPoint(sheet.HeightMillimeters * UnitsPerMillimeter);
            using XGraphics graphics = XGraphics.FromPdfPage(page);
            new PdfPainter(graphics, sheet.HeightMillimeters).Paint(sheet.Picture);
            document.Outlines.Add(CleanText.OneLine(sheet.Name), page);
        }
        return PdfRepairs.Save(document);
    }

    private static void Describe(PdfDocument document, string title, string origin)
    {
        document.Info.Title = title;
        document.Info.Creator = "Nestmark";
        document.Info.CreationDate = FixedDate;
        document.Info.ModificationDate = FixedDate;
        document.Info.Elements["/NestmarkJob"] = new PdfString(origin);
        document.Internals.FirstDocumentID = "nestmark00000000";
        document.Internals.SecondDocumentID = "nestmark00000000";
        document.ViewerPreferences.Elements["/PrintScaling"] = new PdfName("/None");
        document.ViewerPreferences.Elements["/PickTrayByPDFSize"] = new PdfBoolean(true);
        document.ViewerPreferences.Elements["/DisplayDocTitle"] = new PdfBoolean(true);
        document.Language = "en";
    }
}
