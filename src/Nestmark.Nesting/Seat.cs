using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>Where the origin of a turned piece may lie across the lay: a range within one band, or a single place at a fold.</summary>
/// <param name="LowY">Least y, micrometers.</param>
/// <param name="HighY">Greatest y.</param>
/// <param name="X">Its x when it lies on a fold across the cloth; else <c>null</c> for anywhere along the lay.</param>
internal readonly record struct Seat(long LowY, long HighY, long? X)
{
    /// <summary>Every seat that a lay has for a placement in one turn; none when it does not fit.</summary>
    /// <param name="surface">The lay.</param>
    /// <param name="layers">Layers that the placement cuts.</param>
    /// <param name="contact">Whether it lies on a fold.</param>
    /// <param name="turn">How it lies.</param>
    /// <param name="room">Bounds of its cutting line in this turn.</param>
    /// <param name="clean">Bounds of what keeps off off-color strips in this turn; <c>null</c> when nothing does.</param>
    public static IEnumerable<Seat> Of(LaySurface surface, int layers, FoldContact contact, Turn turn, Box room, Box? clean) =>
        OnCloth(surface, layers, contact, turn, room)
            .Select(seat => clean is { } box ? OffShades(surface, seat, box) : seat)
            .Where(seat => seat.LowY <= seat.HighY);

    /// <summary>Bounds of what keeps off off-color strips and flaws; <c>null</c> when nothing does.</summary>
    public static Box? CleanRoom(FlawRule rule, Piece piece, Turn turn) =>
        rule.AreaOf(piece.CuttingLine) is { } area ? turn.Apply(area).Bounds : null;

    /// <summary>Strips lie along the edges of bands: a piece that touches one from its inner side only lies beside it.</summary>
    private static Seat OffShades(LaySurface surface, Seat seat, Box clean)
    {
        foreach (ShadedStrip strip in surface.Shades)
        {
            bool isBelow = surface.Bands.Any(band => band.Low == strip.Low && seat.LowY + clean.MinY < strip.High.Micrometers && seat.LowY + clean.MinY >= strip.Low.Micrometers);
            bool isAbove = surface.Bands.Any(band => band.High == strip.High && seat.HighY + clean.MaxY > strip.Low.Micrometers && seat.HighY + clean.MaxY <= strip.High.Micrometers);
            if (isBelow)
                seat = seat with { LowY = strip.High.Micrometers - clean.MinY };
            if (isAbove)
                seat = seat with { HighY = strip.Low.Micrometers - clean.MaxY };
        }
        return seat;
    }

    private static IEnumerable<Seat> OnCloth(LaySurface surface, int layers, FoldContact contact, Turn turn, Box room)
    {
        if (contact == FoldContact.OnFold)
        {
            return surface.Folds
                .Where(fold => fold.Side == SideFor(turn))
                .Where(fold => surface.Bands[fold.Band].Layers == layers && room.Height <= surface.Bands[fold.Band].Depth.Micrometers)
                .Select(fold => At(fold, surface.Bands[fold.Band], room));
        }
        return surface.Bands
            .Where(band => band.Layers == layers && room.Height <= band.Depth.Micrometers)
            .Select(band => Within(band, room));
    }

    /// <summary>The fold that a half piece, its fold edge drawn below it, can meet in a turn; <c>null</c> for none.</summary>
    public static FoldSide? SideFor(Turn turn) => (turn.Angle.IsQuarterTurn ? turn.Angle.QuarterTurns : -1, turn.Facing) switch
    {
        (0, Facing.Plain) or (2, Facing.Flipped) => FoldSide.Near,
        (2, Facing.Plain) or (0, Facing.Flipped) => FoldSide.Far,
        (3, Facing.Plain) or (1, Facing.Flipped) => FoldSide.Begin,
        _ => null,
    };

    private static Seat At(LayFold fold, LayBand band, Box room) => fold.Side == FoldSide.Begin
        ? Within(band, room) with { X = fold.At.Micrometers }
        : new Seat(fold.At.Micrometers, fold.At.Micrometers, null);

    private static Seat Within(LayBand band, Box room) => new(band.Low.Micrometers - room.MinY, band.High.Micrometers - room.MaxY, null);
}
