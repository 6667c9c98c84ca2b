using System.Collections.Immutable;
using Nestmark.Input.Outlines;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Exceptions;
using UglyToad.PdfPig.Filters;

namespace Nestmark.Input.Pdf;

/// <summary>Opens a PDF and reads its pages; the one place that meets the library's exceptions.</summary>
internal static class PdfLoading
{
    /// <summary>The tiles in their order, then all other pages where a test square is to be found; without tiles all pages. <c>null</c> after an error.</summary>
    public static ImmutableArray<PdfSheet>? Load(ReadOnlyMemory<byte> bytes, DrawingSettings settings, Action<Fault> error)
    {
        try
        {
            ParsingOptions options = new() { UseLenientParsing = true, SkipMissingFonts = true, MaxStackDepth = PdfLimits.DeepestObject, FilterProvider = new BoundedFilters(DefaultFilterProvider.Instance) };
            using PdfDocument document = PdfDocument.Open(bytes.ToArray(), options);
            return Pages(document, settings, error);
        }
        catch (PdfDocumentEncryptedException)
        {
            error(PdfFaults.Encrypted());
        }
        catch (Exception trouble) when (trouble is not OutOfMemoryException)
        {
            // The library throws many kinds of exceptions for damaged files.
            error(PdfFaults.NotReadable(FirstLine(trouble)));
        }
        return null;
    }

    private static ImmutableArray<PdfSheet>? Pages(PdfDocument document, DrawingSettings settings, Action<Fault> error)
    {
        int count = document.NumberOfPages;
        int[] all = [.. Enumerable.Range(1, Math.Min(count, PdfLimits.MostPages))];
        int[] wanted = settings.Tiles is PdfTiles tiles ? [.. tiles.InOrder] : all;
        // The test square may stand on a page that is no tile; such pages come last.
        if (settings.TestSquareSide is not null)
            wanted = [.. wanted, .. all.Except(wanted)];
        Fault? fault = count > PdfLimits.MostPages ? PdfFaults.TooManyPages(count)
            : Array.Find(wanted, page => page > count) is > 0 and int missing ? PdfFaults.NoSuchPage(missing, count)
            : null;
        if (fault is not null)
        {
            error(fault);
            return null;
        }
        PdfPageReading reading = new(document);
        List<PdfSheet> sheets = [];
        foreach (int number in wanted)
        {
            if (Sheet(document, number, reading, error) is not PdfSheet sheet)
                return null;
            sheets.Add(sheet);
        }
        if (!sheets.Exists(sheet => sheet.Strokes.Length > 0))
        {
            error(reading.Images > 0 ? PdfFaults.OnlyPictures() : PdfFaults.NoLines());
            return null;
        }
        return [.. sheets];
    }

    private static PdfSheet? Sheet(PdfDocument document, int number, PdfPageReading reading, Action<Fault> error)
    {
        try
        {
            Page page = document.GetPage(number);
            PdfSheet sheet = reading.Read(page);
            if (!reading.IsTooMuch)
                return sheet;
            error(PdfFaults.TooMuch());
        }
        catch (Exception trouble) when (trouble is not OutOfMemoryException)
        {
            error(PdfFaults.PageBroken(number, FirstLine(trouble)));
        }
        return null;
    }

    private static string FirstLine(Exception trouble)
    {
        int end = trouble.Message.IndexOfAny(['\r', '\n']);
        return (end < 0 ? trouble.Message : trouble.Message[..end]).TrimEnd('.', ' ');
    }
}
