using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Pieces;

namespace Nestmark.Nesting;

/// <summary>Whether a piece and its mirror image are the same piece of cloth.</summary>
internal static class MirrorImage
{
    /// <summary>Drawn curves are flattened within 0.05 mm a side; two of them may differ by twice that.</summary>
    private const long ToleranceMicrometers = 100;

    /// <summary>Notches nearer than 1 mm to each other are one and the same to whoever sews.</summary>
    private const long NotchToleranceMicrometers = 1_000;

    /// <summary>Whether some allowed turn of the mirrored cutting line covers the plain one, vertex by vertex within 0.1 mm, and its notches the plain ones.</summary>
    public static bool IsItsOwn(Piece piece, Nap nap)
    {
        Turn plain = AllowedTurns.For(nap, piece.Grain, Angle.Zero, Facing.Plain)[0];
        (ImmutableArray<Point> Ring, Point[] Notches) still = Laid(piece, plain);
        return AllowedTurns.For(nap, piece.Grain, Angle.Zero, Facing.Flipped)
            .Select(turn => Laid(piece, turn))
            .Any(turned => SameRing(still.Ring, turned.Ring) && SameNotches(still.Notches, turned.Notches));
    }

    /// <summary>The cutting line and the notches as turned, with the box of the cutting line at the origin.</summary>
    private static (ImmutableArray<Point> Ring, Point[] Notches) Laid(Piece piece, Turn turn)
    {
        Polygon turned = turn.Apply(piece.CuttingLine);
        Point shift = new(-turned.Bounds.MinX, -turned.Bounds.MinY);
        return (turned.Shifted(shift).Outer, [.. piece.Notches.Select(notch => turn.Apply(notch.OnCuttingLine) + shift)]);
    }

    private static bool SameNotches(Point[] left, Point[] right) => left.All(notch => right.Any(other =>
        Math.Abs(notch.X - other.X) <= NotchToleranceMicrometers && Math.Abs(notch.Y - other.Y) <= NotchToleranceMicrometers));

    private static bool SameRing(ImmutableArray<Point> left, ImmutableArray<Point> right) =>
        left.Length == right.Length && Enumerable.Range(0, left.Length).Any(start => SameFrom(left, right, start));

    private static bool SameFrom(ImmutableArray<Point> left, ImmutableArray<Point> right, int start)
    {
        for (int i = 0; i < left.Length; i++)
        {
            Point difference = left[i] - right[(i + start) % right.Length];
            if (Math.Abs(difference.X) > ToleranceMicrometers || Math.Abs(difference.Y) > ToleranceMicrometers)
                return false;
        }
        return true;
    }
}
