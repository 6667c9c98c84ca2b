using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Guide;
using Nestmark.Output.Lays;
using Nestmark.Output.Pdf;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>The pages of one piece: its picture, its edges and everything known of it; long lists go on to pages behind.</summary>
internal sealed class PiecePages
{
    private const double Margin = 10;
    private const double Between = 4;
    private const double MostPictureHeight = 150;
    private const double TextSize = 7.5 * 25.4 / 72;

    private readonly Job _job;
    private readonly JobPiece _piece;
    private readonly Paper _paper;

    private PiecePages(Job job, JobPiece piece)
    {
        _job = job;
        _piece = piece;
        _paper = PieceListPages.PaperOf(job);
    }

    private double Width => _paper.Width.TotalMillimeters;

    private double Height => _paper.Height!.Value.TotalMillimeters;

    /// <summary>One page or more.</summary>
    public static IEnumerable<PdfSheet> Of(Job job, JobPiece piece, IReadOnlyList<Problem> problems) => new PiecePages(job, piece).Pages(problems);

    private IEnumerable<PdfSheet> Pages(IReadOnlyList<Problem> problems)
    {
        double tableWidth = (Width - 2 * Margin) * 0.46;
        double factsLeft = Margin + tableWidth + 2 * Between;
        FlowingText facts = Facts(Width - Margin - factsLeft, problems);
        Table table = EdgeTable.Of(_piece, _job.System);
        for (bool isFirst = true; isFirst || !facts.IsEmpty || !table.Rows.IsEmpty; isFirst = false)
        {
            Drawing page = new();
            double top = Height - Margin;
            top = isFirst ? DrawPicture(page, top) : DrawHeader(page, top, "continued") - Between;
            if (!table.Rows.IsEmpty)
                table = DrawRows(page, table, new Spot(Margin, top), tableWidth);
            if (!facts.IsEmpty)
                facts.DrawPage(page, new Spot(factsLeft, top), Margin);
            yield return new PdfSheet(_piece.Piece.Title + (isFirst ? "" : ", continued"), Width, Height, page);
        }
    }

    private static Table DrawRows(Drawing page, Table table, Spot topLeft, double width)
    {
        int count = Table.RowsWithin(topLeft.YMillimeters - Margin, TextSize);
        (table with { Rows = [.. table.Rows.Take(count)] }).Draw(page, topLeft, width, TextSize);
        return table with { Rows = [.. table.Rows.Skip(count)] };
    }

    private FlowingText Facts(double width, IReadOnlyList<Problem> problems)
    {
        PieceFacts facts = new(_piece, _job.System);
        FlowingText text = new(width, TextSize);
        text.Add("Altered", facts.Changes());
        text.Add("Measures", facts.Measures());
        text.Add("Notches", facts.Notches());
        text.Add("Internal lines", facts.Lines());
        text.Add("Marks", facts.Marks());
        text.Add("Notes", problems.Where(IsAboutThis).Select(problem => NoteWords.Of(_job, problem)).Distinct());
        return text;
    }

    // A problem of one size names the size's title; one of all sizes names none.
    private bool IsAboutThis(Problem problem)
    {
        string key = "pieces." + _piece.Piece.Name;
        bool isPiece = problem.Where.Item == key || problem.Where.Item.StartsWith(key + ".", StringComparison.Ordinal);
        bool isOfOtherSize = _job.Pieces.Any(other =>
            other != _piece && other.Piece.Name == _piece.Piece.Name && problem.What.StartsWith(other.Piece.Title + ":", StringComparison.Ordinal));
        return isPiece && !isOfOtherSize;
    }

    private double DrawPicture(Drawing page, double top)
    {
        PieceView view = new(_job, _piece);
        Area extent = view.Extent;
        double room = Width - 2 * Margin - 2 * PieceView.Around;
        double reduction = SheetScale.ReductionFor(extent.WidthMillimeters, extent.HeightMillimeters, room, MostPictureHeight);
        double y = DrawHeader(page, top, SheetScale.Words(reduction)) - PieceView.Around;
        double scale = 1 / reduction;
        double left = Margin + PieceView.Around + (room - extent.WidthMillimeters * scale) / 2;
        Frame frame = new(scale, new Spot(left - extent.LeftMillimeters * scale, y - extent.TopMillimeters * scale));
        view.Draw(page, frame, _job.System);
        return SheetSigns.Draw(page, _piece, new Spot(Margin, y - extent.HeightMillimeters * scale - PieceView.Around), Width - 2 * Margin) - Between;
    }

    private double DrawHeader(Drawing page, double top, string scale)
    {
        string cut = PieceWords.Cut(_piece.Piece);
        double width = Width - 2 * Margin;
        double cutWidth = new TextLine(cut, 5, FontWeight.Bold).WidthMillimeters;
        page.Text(Role.Label, FittedText.Cut(_piece.Piece.Title, 6, FontWeight.Bold, width - cutWidth - 5), new Spot(Margin, top - 6), 6, Anchor.Start, FontWeight.Bold);
        page.Text(Role.Label, cut, new Spot(Margin + width, top - 6), 5, Anchor.End, FontWeight.Bold);
        string line = PieceWords.Joined("Piece sheet", _job.Title, "cloth " + _piece.Cloth, scale);
        page.Text(Role.Label, FittedText.Cut(line, TextSize, FontWeight.Regular, width), new Spot(Margin, top - 11), TextSize);
        return top - 13;
    }
}
