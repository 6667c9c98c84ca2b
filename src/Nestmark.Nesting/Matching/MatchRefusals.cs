using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting.Search;
using Nestmark.Pieces;

namespace Nestmark.Nesting.Matching;

/// <summary>Which pieces cannot keep their rules on a lay, and why.</summary>
internal static class MatchRefusals
{
    /// <summary>Why a piece cannot keep its rules on any place of a lay; <c>null</c> when it may.</summary>
    public static string? Of(Cloth cloth, LaySurface surface, PieceOrder order, string title)
    {
        if (order.Hold is not { } hold)
            return null;
        if (hold.Conflict is { } conflict)
            return $"{title} {conflict}";
        if (order.Piece.Grain == GrainRule.Bias)
            return MatchReasons.Bias(title);
        return surface.Form is LayForm.CrosswiseFold or LayForm.CrosswiseTurned ? MatchReasons.CrosswiseLay(title) : null;
    }

    /// <summary>Why a copy that its rules would let lie in some turns has no seat there; <c>null</c> when it would have none without rules either.</summary>
    /// <param name="print">Where the print lies.</param>
    /// <param name="hold">What holds the copy.</param>
    /// <param name="form">The copy.</param>
    /// <param name="turns">The turns that its rules bear.</param>
    /// <param name="title">Piece and size.</param>
    public static string? Of(LayPrint print, PrintHold hold, CopyForm form, ImmutableArray<Turn> turns, string title)
    {
        if (turns.IsEmpty)
            return MatchReasons.NoTurn(title);
        bool fitsPlain = turns.Any(turn => HeldSeats.Of(print.Surface, null, null, form.Piece, form.Layers, form.Contact, turn, FlawRule.Avoid).Any());
        if (!fitsPlain)
            return null;
        if (hold.OnBorderMicrometers is not null)
            return MatchReasons.OffBorder(title);
        if (print.Cloth.Repeat is { Balance: PrintBalance.Uneven })
            return MatchReasons.UnevenFold(title);
        bool hasBars = Enumerable.Range(0, print.Bars.Length).Any(band => print.Surface.Bands[band].Layers == form.Layers && print.Bars[band] is not null);
        return hasBars ? MatchReasons.WrongCenter(title, FoldFor(print, hold.Across!.RepeatMicrometers / 2)) : MatchReasons.FoldBesideBar(title, FoldFor(print, 0));
    }

    /// <summary>The task without the pieces for which no place matches the others.</summary>
    public static LayTask WithoutStuck(LayTask task)
    {
        while (PrintGrid.Of(task)?.Stuck() is { IsEmpty: false } stuck)
        {
            Demand deepest = stuck.Select(item => task.Demands[item]).MaxBy(demand => demand.Piece.CuttingLine.Bounds.Height)!;
            string title = deepest.Size.Length == 0 ? deepest.Piece.Name : deepest.Piece.Name + " " + deepest.Size;
            task = task with
            {
                Demands = [.. task.Demands.Where(demand => demand.Piece.Name != deepest.Piece.Name || demand.Size != deepest.Size)],
                Impossible = task.Impossible.Add(new Unplaced(deepest.Piece.Name, deepest.Size, MatchReasons.NoRoomOnBars(title))),
            };
        }
        return task;
    }

    private static string FoldFor(LayPrint print, long back)
    {
        Length middle = print.Cloth.UsableWidth / 2 - Length.FromMicrometers(Math.Max(1, back));
        return LayPrint.FoldOnBar(print.Cloth, middle).TotalCentimeters.ToString("0.##", CultureInfo.InvariantCulture) + " cm";
    }
}
