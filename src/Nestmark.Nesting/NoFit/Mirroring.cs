using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Nesting.NoFit;

/// <summary>One of the four ways in which a shape can be turned over upright axes, which change no micrometer: as it is, over one axis, over the other, or half round.</summary>
/// <param name="SignX">1 or -1.</param>
/// <param name="SignY">1 or -1.</param>
internal readonly record struct Mirroring(int SignX, int SignY)
{
    /// <summary>All four; the first leaves a shape as it is.</summary>
    public static ImmutableArray<Mirroring> All { get; } = [new(1, 1), new(-1, -1), new(1, -1), new(-1, 1)];

    /// <summary>Index in <see cref="All"/>.</summary>
    public int Index => SignX == SignY ? (SignX > 0 ? 0 : 1) : SignX > 0 ? 2 : 3;

    /// <summary>What leads back to a canonical pose from a turn: the flip, and half a turn where the rest would be one or more.</summary>
    public static Mirroring Of(Turn turn)
    {
        bool isFlipped = turn.Facing == Facing.Flipped;
        Angle plain = isFlipped ? -turn.Angle : turn.Angle;
        int half = plain.TotalDegrees < 180 ? 1 : -1;
        return new Mirroring(half, isFlipped ? -half : half);
    }

    /// <summary>One after the other, in either order; undone by itself.</summary>
    public Mirroring After(Mirroring other) => new(SignX * other.SignX, SignY * other.SignY);

    public Point Apply(Point point) => new(SignX * point.X, SignY * point.Y);

    public Polygon Apply(Polygon polygon)
    {
        Mirroring mirroring = this;
        return Index == 0 ? polygon : polygon.Mapped(mirroring.Apply);
    }
}
