namespace Nestmark.Pieces.Making;

/// <summary>The point of a segment that is nearest to a place.</summary>
internal static class Nearest
{
    public static Vector OnSegment(Vector start, Vector end, Vector place)
    {
        Vector along = end - start;
        double squared = along.Dot(along);
        if (squared == 0)
            return start;
        return start + Math.Clamp((place - start).Dot(along) / squared, 0, 1) * along;
    }
}
