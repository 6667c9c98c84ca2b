using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>A piece drawn to scale: as it is cut, and lightly as it was before its alterations.</summary>
internal sealed class PieceView
{
    /// <summary>Room around the piece for the names of corners and edges.</summary>
    public const double Around = 9;

    private static readonly Ink Cutting = new(0.4);
    private static readonly Ink Seam = new(0.15, LineStyle.Dashed, 0.15);
    private static readonly Ink Before = new(0.3, LineStyle.Dashed, 0.6);
    private static readonly Ink Thin = new(0.18);

    private readonly JobPiece _piece;
    private readonly Laid _laid;
    private readonly Nap _nap;

    /// <summary>The view of a piece of a job.</summary>
    public PieceView(Job job, JobPiece piece)
    {
        _piece = piece;
        _laid = AsLaid(piece.Piece);
        _nap = job.Cloths.FirstOrDefault(cloth => cloth.Name == piece.Cloth)?.Nap ?? Nap.OneWay;
    }

    /// <summary>What it covers at true size, the outline before included.</summary>
    public Area Extent => Cuts().Select(laid => Area.Around(laid.CuttingRings(Frame.TrueSize)[0])).Aggregate((left, right) => left.Including(right));

    /// <summary>Draws it.</summary>
    /// <param name="page">Gets it.</param>
    /// <param name="frame">Where it lies.</param>
    /// <param name="system">The job's units.</param>
    public void Draw(Drawing page, Frame frame, MeasureSystem system)
    {
        if (Cuts().Skip(1).FirstOrDefault() is Laid before)
            before.DrawCuttingLine(page, frame, Before);
        DrawInside(page, frame);
        if (_piece.Piece.SeamLine.AreaSquareMillimeters < _piece.Piece.CuttingLine.AreaSquareMillimeters)
            page.Add(new PathFigure(Role.SeamLine, _laid.SeamRings(frame), PathEnds.Closed, Seam, null));
        _laid.DrawCuttingLine(page, frame, Cutting);
        NotchMark.DrawAll(page, frame, _laid.Placement, 1.6);
        GrainArrow.Draw(page, frame, _laid.Placement, _nap, Thin, 2.5);
        if (FoldBracket.Draw(page, frame, _laid.Placement, new Ink(0.25), 2.5) is Spot above)
            page.Text(Role.FoldEdge, PieceWords.OnFold, above.Moved(0, 0.8), 2.4, Anchor.Middle);
        DrawFoldEdge(page, frame);
        EdgeNames.Draw(page, frame, _piece.Piece, system);
    }

    private IEnumerable<Laid> Cuts()
    {
        yield return _laid;
        if (_piece.Before is Piece before)
            yield return AsLaid(before, _piece.BeforeShift);
    }

    private static Laid AsLaid(Piece piece, Point shift = default) => new(1, 1, new Placement(
        piece, piece.Size, 1, 1, piece.FoldEdge is null ? FoldContact.Free : FoldContact.OnFold, Turn.None, shift));

    private void DrawFoldEdge(Drawing page, Frame frame)
    {
        if (_piece.Piece.FoldEdge is Segment fold)
            page.Line(Role.Fold, new Ink(0.5, LineStyle.DashDot), frame.Of(fold.Start), frame.Of(fold.End));
    }

    private void DrawInside(Drawing page, Frame frame)
    {
        foreach ((PieceLine line, int i) in _piece.Piece.Lines.Select((line, i) => (line, i)))
        {
            Spot[] spots = [.. line.Points.Select(frame.Of)];
            page.Line(Role.InternalLine, Thin, spots);
            Name(page, Role.InternalLine, line.Label, (spots.Length == 2 ? spots[0].Toward(spots[1], 0.1) : spots[spots.Length / 2]).Moved(0.8, 0.8));
        }
        foreach (PieceMark mark in _piece.Piece.Marks)
        {
            Spot spot = frame.Of(mark.Place);
            page.Line(Role.Mark, Thin, spot.Moved(-1.2, 0), spot.Moved(1.2, 0));
            page.Line(Role.Mark, Thin, spot.Moved(0, -1.2), spot.Moved(0, 1.2));
            Name(page, Role.Mark, mark.Label, spot.Moved(0.8, 0.8));
        }
        if (_piece.Piece.CenterLine is Segment center)
            page.Line(Role.CenterLine, new Ink(0.18, LineStyle.DashDot), frame.Of(center.Start), frame.Of(center.End));
    }

    private static void Name(Drawing page, Role role, string name, Spot at)
    {
        if (name.Length > 0)
            page.Text(role, FittedText.Cut(name, 2.1, FontWeight.Regular, 40), at, 2.1);
    }
}
