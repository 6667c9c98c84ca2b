using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>What the lines on a piece sheet mean; only those that occur.</summary>
internal static class SheetSigns
{
    private const double Size = 2.3;
    private const double SignWidth = 8;

    /// <summary>Draws them in a row or two.</summary>
    /// <returns>Where they end, counted up the page.</returns>
    public static double Draw(Drawing page, JobPiece piece, Spot topLeft, double widthMillimeters)
    {
        Spot at = topLeft.Moved(0, -3);
        foreach ((Role role, Ink ink, string words) in SignsOf(piece))
        {
            double sign = ink.Style == LineStyle.DashDot ? 2 * SignWidth : SignWidth;
            double width = sign + 1.5 + new TextLine(words, Size).WidthMillimeters;
            if (at.XMillimeters + width > topLeft.XMillimeters + widthMillimeters)
                at = new Spot(topLeft.XMillimeters, at.YMillimeters - 4);
            page.Line(role, ink, at, at.Moved(sign, 0));
            page.Text(Role.Label, words, at.Moved(sign + 1.5, -0.8), Size);
            at = at.Moved(width + 5, 0);
        }
        return at.YMillimeters - 3;
    }

    private static IEnumerable<(Role, Ink, string)> SignsOf(JobPiece piece)
    {
        yield return (Role.CuttingLine, new Ink(0.4), "cutting line");
        if (piece.Piece.SeamLine.AreaSquareMillimeters < piece.Piece.CuttingLine.AreaSquareMillimeters)
            yield return (Role.SeamLine, new Ink(0.15, LineStyle.Dashed, 0.15), "seam line; lengths of edges are measured on it");
        if (piece.Piece.FoldEdge is not null)
            yield return (Role.Fold, new Ink(0.5, LineStyle.DashDot), "on the fold");
        if (piece.Before is not null)
            yield return (Role.Join, new Ink(0.3, LineStyle.Dashed, 0.6), "cutting line before the alterations");
    }
}
