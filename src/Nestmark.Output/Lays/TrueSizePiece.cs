using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Output.Drawings;
using Nestmark.Pieces;

namespace Nestmark.Output.Lays;

/// <summary>A placement at true size, as it lies on the lay: every line of it, and its label.</summary>
internal sealed class TrueSizePiece
{
    private static readonly Ink Cutting = new(0.5);
    private static readonly Ink Seam = new(0.25, LineStyle.Dashed, 0.3);
    private static readonly Ink Thin = new(0.3);
    private static readonly Ink Center = new(0.3, LineStyle.DashDot);

    private readonly LabelPlace? _label;
    private readonly ImmutableArray<(Spot Start, Spot End)> _obstacles;

    private TrueSizePiece(Laid laid, Drawing picture, string garment)
    {
        Laid = laid;
        Rings = laid.CuttingRings(Frame.TrueSize);
        Edges = [.. Rings.SelectMany(ring => ring.Select((spot, i) => (spot, ring[(i + 1) % ring.Length])))];
        Bounds = Area.Around(Rings[0]);
        Picture = picture;
        _obstacles = [.. LinesToAvoid()];
        _label = new LabelRoom(laid.SeamRings(Frame.TrueSize), Bounds, _obstacles).PlaceFor(LaidLabel.Large(laid, garment), 0.2)
            ?? new LabelRoom(Rings, Bounds, []).PlaceFor(LaidLabel.Large(laid, garment), 0.2);
    }

    /// <summary>The placement.</summary>
    public Laid Laid { get; }

    /// <summary>Its cutting line, outer ring first.</summary>
    public ImmutableArray<ImmutableArray<Spot>> Rings { get; }

    /// <summary>The edges of its cutting line.</summary>
    public ImmutableArray<(Spot Start, Spot End)> Edges { get; }

    /// <summary>The area around its cutting line.</summary>
    public Area Bounds { get; }

    /// <summary>Its lines and its large label.</summary>
    public Drawing Picture { get; }

    /// <summary>What its words cover: its large label, and those beside lines, marks and fold.</summary>
    public IEnumerable<Area> TextAreas => Picture.Figures.OfType<TextFigure>().Select(text => text.Covered);

    /// <summary>Draws a placement.</summary>
    /// <param name="laid">The placement.</param>
    /// <param name="nap">The cloth's nap.</param>
    /// <param name="garment">Title of the job.</param>
    public static TrueSizePiece Draw(Laid laid, Nap nap, string garment)
    {
        Drawing picture = new();
        DrawLines(picture, laid, nap);
        TrueSizePiece piece = new(laid, picture, garment);
        piece._label?.Draw(picture);
        return piece;
    }

    /// <summary>A small label inside a part of the piece, unless the large one stands there already.</summary>
    /// <param name="region">The part, for example what one page shows.</param>
    /// <param name="taken">Areas that the label keeps off.</param>
    public LabelPlace? SmallLabelIn(Area region, IEnumerable<Area> taken)
    {
        if (_label?.Area is not Area large)
            return new LabelRoom(Rings, region, _obstacles, taken).PlaceFor(LaidLabel.Small(Laid), 0.5);
        if (region.Holds(large.Corners[0]) && region.Holds(large.Corners[2]))
            return null;
        return new LabelRoom(Rings, region, _obstacles, taken.Append(large)).PlaceFor(LaidLabel.Small(Laid), 0.5);
    }

    private static void DrawLines(Drawing picture, Laid laid, Nap nap)
    {
        Frame frame = Frame.TrueSize;
        Piece piece = laid.Placement.Piece;
        foreach (PieceLine line in piece.Lines)
            DrawInternalLine(picture, laid, line);
        foreach (PieceMark mark in piece.Marks)
            DrawMark(picture, laid, mark);
        if (piece.SeamLine.AreaSquareMillimeters < piece.CuttingLine.AreaSquareMillimeters)
            picture.Add(new PathFigure(Role.SeamLine, laid.SeamRings(frame), PathEnds.Closed, Seam, null));
        laid.DrawCuttingLine(picture, frame, Cutting);
        NotchMark.DrawAll(picture, frame, laid.Placement, 5);
        if (piece.CenterLine is Segment center)
            picture.Line(Role.CenterLine, Center, frame.Of(laid.Placement.Map(center.Start)), frame.Of(laid.Placement.Map(center.End)));
        GrainArrow.Draw(picture, frame, laid.Placement, nap, Thin, 8);
        if (FoldBracket.Draw(picture, frame, laid.Placement, new Ink(0.4), 8) is Spot above)
            picture.Text(Role.FoldEdge, PieceWords.OnFold, above.Moved(0, 2), 5, Anchor.Middle);
    }

    private static void DrawInternalLine(Drawing picture, Laid laid, PieceLine line)
    {
        Spot[] spots = [.. line.Points.Select(point => Frame.TrueSize.Of(laid.Placement.Map(point)))];
        picture.Line(Role.InternalLine, Thin, spots);
        if (line.Label.Length > 0)
            picture.Text(Role.InternalLine, line.Label, spots[0].Toward(spots[^1], 0.5).Moved(1.5, 1.5), 4);
    }

    private static void DrawMark(Drawing picture, Laid laid, PieceMark mark)
    {
        Spot spot = Frame.TrueSize.Of(laid.Placement.Map(mark.Place));
        picture.Line(Role.Mark, Thin, spot.Moved(-3, 0), spot.Moved(3, 0));
        picture.Line(Role.Mark, Thin, spot.Moved(0, -3), spot.Moved(0, 3));
        if (mark.Label.Length > 0)
            picture.Text(Role.Mark, mark.Label, spot.Moved(1.5, 1.5), 4);
    }

    private IEnumerable<(Spot Start, Spot End)> LinesToAvoid()
    {
        foreach (PathFigure path in Picture.Figures.OfType<PathFigure>().Where(path => path.Role is not (Role.CuttingLine or Role.SeamLine)))
            foreach (ImmutableArray<Spot> run in path.Runs)
                for (int i = 0; i + 1 < run.Length; i++)
                    yield return (run[i], run[i + 1]);
        foreach (TextFigure text in Picture.Figures.OfType<TextFigure>())
        {
            double start = text.Anchor == Anchor.Middle ? -text.WidthMillimeters / 2 : 0;
            yield return (text.At.Moved(start, text.SizeMillimeters * 0.4), text.At.Moved(start + text.WidthMillimeters, text.SizeMillimeters * 0.4));
        }
    }
}
