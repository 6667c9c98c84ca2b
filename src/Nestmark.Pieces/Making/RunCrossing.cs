using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>Where a path first meets a run of straight lines.</summary>
/// <param name="Place">The meeting point.</param>
/// <param name="PathIndex">Segment of the path, from 0.</param>
/// <param name="RunIndex">Segment of the run, from 0.</param>
internal sealed record RunCrossing(Vector Place, int PathIndex, int RunIndex)
{
    private const double Slack = 1e-9;

    /// <summary>The first meeting along the path; <c>null</c> where they do not meet. Lines that run alongside each other do not meet.</summary>
    public static RunCrossing? First(ImmutableArray<Vector> path, ImmutableArray<Vector> run)
    {
        for (int i = 0; i + 1 < path.Length; i++)
        {
            (double Share, int RunIndex)? nearest = null;
            for (int j = 0; j + 1 < run.Length; j++)
            {
                if (ShareOfMeeting(path[i], path[i + 1], run[j], run[j + 1]) is double share && !(share >= nearest?.Share))
                    nearest = (share, j);
            }
            if (nearest is var (found, index))
                return new RunCrossing(path[i] + found * (path[i + 1] - path[i]), i, index);
        }
        return null;
    }

    private static double? ShareOfMeeting(Vector start, Vector end, Vector otherStart, Vector otherEnd)
    {
        Vector along = end - start;
        Vector other = otherEnd - otherStart;
        double area = along.Cross(other);
        if (Math.Abs(area) <= Slack * along.Norm * other.Norm)
            return null;
        double share = (otherStart - start).Cross(other) / area;
        double otherShare = (otherStart - start).Cross(along) / area;
        return share is >= -Slack and <= 1 + Slack && otherShare is >= -Slack and <= 1 + Slack ? share : null;
    }
}
