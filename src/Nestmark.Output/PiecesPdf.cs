using Nestmark.Output.Pdf;
using Nestmark.Output.PieceSheets;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The piece sheet as PDF: a list of all pieces, then each piece to scale with everything that was read of it.</summary>
public static class PiecesPdf
{
    /// <summary>The file's bytes. A4 for metric jobs and US letter for others; an altered piece is shown before and after.</summary>
    /// <param name="job">As read and altered.</param>
    /// <param name="problems">What was found in reading and checking it, notes included.</param>
    public static byte[] Write(Job job, IReadOnlyList<Problem> problems)
    {
        List<PdfSheet> sheets = [.. PieceListPages.Of(job, problems)];
        foreach (JobPiece piece in job.Pieces)
            sheets.AddRange(PiecePages.Of(job, piece, problems));
        return PdfFile.Write(sheets, job.Title + " – piece sheet", JobOrigin.Of(job));
    }
}
