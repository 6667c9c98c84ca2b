using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>The rigid motion of the part beyond a slash: a turn about its end, or a shift square to it.</summary>
/// <param name="Pivot">About which it turns; the slash's end.</param>
/// <param name="Cosine">Of the turn.</param>
/// <param name="Sine">Of the turn, counter-clockwise.</param>
/// <param name="Shift">Added after the turn.</param>
/// <param name="Far">Where a strip or wedge that is taken out ends.</param>
internal sealed record SlashMove(Vector Pivot, double Cosine, double Sine, Vector Shift, StraightLine Far)
{
    /// <summary>The motion that opens a slash by so much at its beginning; below zero closes it.</summary>
    public static SlashMove Of(Chord chord, double micrometers, SlashOpening opening)
    {
        Vector along = (chord.From - chord.To).Unit;
        double side = chord.MovesLeft ? 1 : -1;
        if (opening == SlashOpening.Parallel)
        {
            Vector square = -side * along.Right;
            Vector shift = micrometers * square;
            return new SlashMove(chord.To, 1, 0, shift, new StraightLine(chord.To - shift, along));
        }
        // The chord between the two places of the slash's beginning is as long as it opens.
        double part = micrometers / chord.LengthMicrometers;
        double cosine = 1 - part * part / 2;
        double sine = Math.Sign(micrometers) * side * Math.Sqrt(Math.Max(0, 1 - cosine * cosine));
        Vector far = new(cosine * along.X + sine * along.Y, cosine * along.Y - sine * along.X);
        return new SlashMove(chord.To, cosine, sine, default, new StraightLine(chord.To, far));
    }

    public Vector Apply(Vector place)
    {
        Vector from = place - Pivot;
        return Pivot + new Vector(Cosine * from.X - Sine * from.Y, Sine * from.X + Cosine * from.Y) + Shift;
    }
}
