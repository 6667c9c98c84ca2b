using Nestmark.Output.Guide;
using Nestmark.Output.Pdf;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The guide sheet as PDF: for each cloth the lay to scale, with measures to lay it by, cut list, cloth to buy and cautions; of several cloths a shopping list first.</summary>
public static class GuidePdf
{
    /// <summary>The file's bytes. One page a cloth, A4 for metric jobs and US letter for others; a table too long for it goes to pages behind.</summary>
    public static byte[] Write(Plan plan)
    {
        IEnumerable<PdfSheet> shopping = plan.Cloths.Length > 1 ? ShoppingPage.For(plan) : [];
        List<PdfSheet> sheets = [.. shopping, .. plan.Cloths.SelectMany(cloth => GuideSheet.For(plan, cloth))];
        return PdfFile.Write(sheets, plan.Job.Title + " – guide sheet", JobOrigin.Of(plan.Job));
    }
}
