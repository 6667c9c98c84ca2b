using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Pieces.Making;

namespace Nestmark.Pieces;

/// <summary>Turns a draft into a piece: corners lettered, allowances added, grain along x, fold edge on y = 0.</summary>
/// <remarks>
/// A piece without a fold lies with the box of its cutting line at the origin; one on the fold with its fold edge from x = 0 on.
/// The head of the grainline, its end, lies toward +x. Where a half piece would then lie below its fold edge it is turned over, which changes
/// nothing on the opened piece; its letters then run clockwise. The fold edge of a piece is what of its cutting line lies on the fold.
/// Bias, crosswise and free grain are handed on for the lay; here every grainline lies along x.
/// </remarks>
public static class PieceMaking
{
    /// <summary>Longest outline that is made into a piece, in points; drawn shapes have hundreds, and this many take some seconds.</summary>
    public const int MostPoints = 20_000;

    private const double LongestOutlineMicrometers = 900_000_000;

    /// <summary>Makes the piece, or says everything that stands in its way.</summary>
    /// <param name="draft">As read; not changed.</param>
    /// <returns>Never throws for what a drawing may hold; faults come in the order outline, edges, fold, grain, marks.</returns>
    public static PieceResult Make(PieceDraft draft)
    {
        List<PieceFault> faults = [.. DraftChecks.Of(draft)];
        SeamOutline? outline = faults.Count == 0 ? OutlineOf(draft, faults) : null;
        LayingPlan? plan = outline is null ? null : PlanOf(draft, outline, faults);
        LaidOutline? laid = plan is null || HasError(faults) ? null : LaidOutline.Of(outline!, plan, faults);
        if (laid is null)
            return new PieceResult(null, [.. faults]);
        ImmutableArray<Notch> notches = NotchCarrying.Of(draft.Notches, laid, faults);
        return new PieceResult(HasError(faults) ? null : PieceOf(draft, laid, notches), [.. faults]);
    }

    private static bool HasError(List<PieceFault> faults) => faults.Any(fault => fault.Weight == FaultWeight.Error);

    private static SeamOutline? OutlineOf(PieceDraft draft, List<PieceFault> faults)
    {
        SeamOutline? outline = SeamOutline.Of(draft.Outline, draft.Corners);
        PieceFault? fault =
            outline is null ? PieceFaults.NoArea()
            : outline.Edges.Sum(edge => edge.LengthMicrometers) > LongestOutlineMicrometers ? PieceFaults.TooLong()
            : !Clipping.IsSimple(Polygon.Of(outline.Points)) ? PieceFaults.CrossesItself()
            : null;
        if (fault is null)
            return outline;
        faults.Add(fault);
        return null;
    }

    private static LayingPlan PlanOf(PieceDraft draft, SeamOutline outline, List<PieceFault> faults)
    {
        List<PieceFault> foldFaults = [];
        int? fold = FoldFinding.Find(draft, outline, foldFaults);
        ImmutableArray<EdgeAllowance> widths = EdgeWidths.Of(draft, outline, fold, faults);
        faults.AddRange(foldFaults);
        Turn turn = GrainFinding.Find(draft, fold is int index ? outline.Edges[index] : null, faults);
        return new LayingPlan(turn, widths, fold, draft.PointLimitRatio);
    }

    private static Piece PieceOf(PieceDraft draft, LaidOutline laid, ImmutableArray<Notch> notches)
    {
        bool turnedOver = laid.Frame.Turn.Facing == Facing.Flipped;
        ImmutableArray<LaidEdge> asLettered = turnedOver ? [.. laid.Edges.Reverse()] : laid.Edges;
        return new Piece
        {
            Name = draft.Name,
            Size = draft.Size,
            Cut = draft.Cut,
            SeamLine = laid.SeamLine,
            CuttingLine = laid.CuttingLine,
            Grainline = GrainlineOf(draft, laid),
            FoldEdge = laid.FoldEdge,
            CenterLine = null,
            Corners = [.. asLettered.Select(edge => new PieceCorner(edge.From, turnedOver ? edge.Points[^1] : edge.Points[0]))],
            Edges = [.. asLettered.Select(PieceEdgeOf)],
            Notches = notches,
            Lines = [.. draft.Lines.Select(line => line with { Points = laid.Frame.Apply(line.Points) })],
            Marks = [.. draft.Marks.Select(mark => mark with { Place = laid.Frame.Apply(mark.Place) })],
            Grain = draft.Grain,
            Tilt = draft.Tilt,
            Direction = draft.Direction,
            Stretch = draft.Stretch,
            Flaws = draft.Flaws,
            PiecedAllowance = draft.PiecedAllowance,
        };
    }

    private static PieceEdge PieceEdgeOf(LaidEdge edge)
    {
        double micrometers = new OutlineEdge(edge.From, edge.To, edge.Points).LengthMicrometers;
        return new PieceEdge(edge.From, edge.To, Length.FromMillimeters(micrometers / 1000), edge.Width, edge.Kind);
    }

    /// <summary>The drawn grainline; a new one where none is drawn or the fold edge has overruled it.</summary>
    private static Segment GrainlineOf(PieceDraft draft, LaidOutline laid)
    {
        if (draft.Grainline is not { } drawn)
            return GrainArrow.Inside(laid.SeamLine);
        Segment turned = new(laid.Frame.Apply(drawn.Start), laid.Frame.Apply(drawn.End));
        return GrainFinding.LiesAlongX(turned) ? GrainArrow.Level(turned) : GrainArrow.Inside(laid.SeamLine);
    }
}
