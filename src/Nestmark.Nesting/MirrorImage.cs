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

    /// <summary>Whether some allowed turn of the mirrored cutting line covers the plain one, vertex by vertex within 0.1 mm.</summary>
    public static bool IsItsOwn(Piece piece, Nap nap)
    {
        ImmutableArray<Turn> plain = AllowedTurns.For(nap, piece.Grain, Angle.Zero, Facing.Plain);
        ImmutableArray<Point> still = AtOrigin(plain[0].Apply(piece.CuttingLine));
        return AllowedTurns.For(nap, piece.Grain, Angle.Zero, Facing.Flipped)
            .Any(turn => SameRing(still, AtOrigin(turn.Apply(piece.CuttingLine))));
    }

    private static ImmutableArray<Point> AtOrigin(Polygon polygon) =>
        polygon.Shifted(new Point(-polygon.Bounds.MinX, -polygon.Bounds.MinY)).Outer;

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
