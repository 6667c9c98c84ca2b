using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting.Matching;

/// <summary>The seats of a placement, fewer where the print holds it: none on layers whose bars miss each other, one line on a border.</summary>
internal static class HeldSeats
{
    private const long SlackMicrometers = 40;

    /// <summary>Every seat that a task leaves a demand in one turn.</summary>
    public static IEnumerable<Seat> Of(LayTask task, Demand demand, Turn turn) =>
        Of(task.Surface, demand.Hold is null ? null : task.Print, demand.Hold, demand.Piece, demand.Layers, demand.Contact, turn, demand.Flaws);

    /// <summary>Every seat for a piece as laid, in one turn.</summary>
    public static IEnumerable<Seat> Of(
        LaySurface surface, LayPrint? print, PrintHold? hold, Piece piece, int layers, FoldContact contact, Turn turn, FlawRule flaws)
    {
        Box room = turn.Apply(piece.CuttingLine).Bounds;
        IEnumerable<Seat> seats = Seat.Of(surface, layers, contact, turn, room, Seat.CleanRoom(flaws, piece, turn));
        return print is null || hold is null ? seats : seats.SelectMany(seat => Held(print, hold, contact, turn, room, seat));
    }

    /// <summary>The band that a seat lies in.</summary>
    public static int BandOf(LaySurface surface, Box room, Seat seat) => Enumerable.Range(0, surface.Bands.Length)
        .First(i => surface.Bands[i].Low.Micrometers <= seat.LowY + room.MinY && surface.Bands[i].High.Micrometers >= seat.HighY + room.MaxY);

    private static IEnumerable<Seat> Held(LayPrint print, PrintHold hold, FoldContact contact, Turn turn, Box room, Seat seat)
    {
        int band = BandOf(print.Surface, room, seat);
        int sign = HeldTurns.SignOf(turn, ClothAxis.Across);
        if (hold.OnBorderMicrometers is { } coordinate)
            return print.Borders[band].Select(border => OnBorder(print.Surface.Bands[band], border.Micrometers, sign * coordinate, room)).OfType<Seat>()
                .Where(found => found.LowY >= seat.LowY && found.LowY <= seat.HighY);
        if (hold.Across is not { } axis)
            return [seat];
        if (print.Bars[band] is not { } bar)
            return [];
        return contact == FoldContact.Free || IsOnPhase(axis, sign * (seat.LowY - bar.Micrometers) - axis.ShiftMicrometers) ? [seat] : [];
    }

    /// <summary>The seat that puts a coordinate on the border, with the piece toward the middle of the cloth.</summary>
    private static Seat? OnBorder(LayBand band, long border, long coordinate, Box room)
    {
        long y = border - coordinate;
        bool isInward = (room.MinY + room.MaxY) / 2 + y > border == (band.Low + band.High).Micrometers / 2 > border;
        return isInward ? new Seat(y, y, null) : null;
    }

    private static bool IsOnPhase(AxisHold axis, long phase) =>
        axis.Phases.IsEmpty || axis.Phases.Any(allowed => ShiftTable.Miss(phase - allowed, axis.RepeatMicrometers) <= SlackMicrometers);
}
