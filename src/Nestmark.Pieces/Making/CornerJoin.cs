using System.Collections.Immutable;

namespace Nestmark.Pieces.Making;

/// <summary>The cutting line round one corner: mitred, squared or reflected, within the point limit.</summary>
/// <param name="Points">From the arriving edge to the leaving one.</param>
/// <param name="Outcome">Whether it ends as asked.</param>
/// <remarks>
/// The rules are those of references/trade.md 3.3. At a corner that both edges would rule, reflected comes before squared;
/// two squared edges leave it to the wider one, or the arriving one when alike; two reflected edges are mitred.
/// Inner corners meet inside whatever the rule. An edge without width has nothing to square or reflect.
/// A reflected end is the mirror image about the tangent at the corner. Along a hem of radius R, s from the corner, an allowance of depth d turned up
/// along the curve lies 2ds/R beside that (geometry): 0.3 mm for a hem of 4 cm, sides 1 in 10 and R = 1 m. More than 1 mm is noted.
/// </remarks>
internal sealed record CornerJoin(ImmutableArray<Vector> Points, JoinOutcome Outcome)
{
    private const double Straight = 1e-9;

    /// <summary>A turned-up edge may end so far beside the piece before it is noted: a third of what cut hems are allowed to be off (references/trade.md 4.4 [VN p.210]); the share is our own choice.</summary>
    private const double CurveSlackMicrometers = 1_000;

    /// <summary>Joins two edges at their corner and marks on both how much of their run it cuts away.</summary>
    /// <param name="arriving">The edge that ends at the corner.</param>
    /// <param name="leaving">The edge that starts there.</param>
    /// <param name="pointLimitRatio">1 or more.</param>
    public static CornerJoin Between(AllowanceSide arriving, AllowanceSide leaving, double pointLimitRatio)
    {
        CornerAngle angle = CornerAngle.Of(arriving, leaving, pointLimitRatio);
        if (arriving.Kind == EdgeKind.Fold)
            return AsAsked(FoldJoin.From(leaving, arriving, angle));
        if (leaving.Kind == EdgeKind.Fold)
            return AsAsked(FoldJoin.From(arriving, leaving, angle).Reverse());
        if (angle.Sine <= Straight && angle.Cosine > 0 || angle.Sine < 0)
            return Inside(arriving, leaving, angle);
        return BearerOf(arriving, leaving) is not { } bearer
            ? AsAsked(Mitred(arriving, leaving, angle))
            : Ruled(bearer, bearer == arriving ? leaving : arriving, arriving, angle);
    }

    /// <summary>The join as a station of the ring between the two edges.</summary>
    public RingStation StationAt(AllowanceSide arriving, AllowanceSide leaving) =>
        new(arriving.Corner, Points, Outcome == JoinOutcome.ThroughCorner ? (arriving.Foot, leaving.Foot) : null);

    private static CornerJoin AsAsked(IEnumerable<Vector> points) => new([.. points], JoinOutcome.AsAsked);

    /// <summary>The edge whose rule the corner follows; <c>null</c> for a mitre.</summary>
    private static AllowanceSide? BearerOf(AllowanceSide arriving, AllowanceSide leaving)
    {
        AllowanceEnds left = arriving.Width > 0 ? arriving.Ends : AllowanceEnds.Mitred;
        AllowanceEnds right = leaving.Width > 0 ? leaving.Ends : AllowanceEnds.Mitred;
        if (left == right)
            return left == AllowanceEnds.Squared ? (leaving.Width > arriving.Width ? leaving : arriving) : null;
        return left > right ? arriving : leaving;
    }

    private static CornerJoin Ruled(AllowanceSide bearer, AllowanceSide crossing, AllowanceSide arriving, CornerAngle angle)
    {
        ImmutableArray<Vector> points = bearer.Ends == AllowanceEnds.Reflected
            ? Reflected(bearer, crossing, angle)
            : Squared(bearer, crossing, angle);
        if (points.IsEmpty)
            return new CornerJoin([.. Mitred(arriving, bearer == arriving ? crossing : bearer, angle)], JoinOutcome.MitredInstead);
        bool isOff = bearer.Ends == AllowanceEnds.Reflected && IsOffCurve(bearer, points[0], angle);
        return new CornerJoin(bearer == arriving ? points : [.. points.Reverse()], isOff ? JoinOutcome.ReflectedOffCurve : JoinOutcome.AsAsked);
    }

    /// <summary>Whether the end of a reflected allowance lies elsewhere when it is turned up along the curve and when it is mirrored about the tangent.</summary>
    private static bool IsOffCurve(AllowanceSide bearer, Vector end, CornerAngle angle)
    {
        Vector mirrored = end.MirroredAbout(bearer.Corner, bearer.Along);
        return (bearer.TurnedUp(end, angle.ReachMicrometers) - mirrored).Norm > CurveSlackMicrometers;
    }

    /// <summary>Both cut edges run on until they meet; past the limit the tip is cut square to the line from the corner to it, which is the bisector for equal widths.</summary>
    private static ImmutableArray<Vector> Mitred(AllowanceSide arriving, AllowanceSide leaving, CornerAngle angle)
    {
        Vector tip = angle.Tip(arriving, leaving);
        AllowanceSide narrow = arriving.Width <= leaving.Width ? arriving : leaving;
        AllowanceSide wide = narrow == arriving ? leaving : arriving;
        if (angle.Cosine > 0 && wide.Width * angle.Cosine > narrow.Width)
            return RunningInto(wide, narrow, arriving, angle);
        if (tip.Norm > angle.LimitMicrometers)
            return CutTip(arriving, leaving, tip.Unit, angle.LimitMicrometers);
        Vector place = arriving.Corner + tip;
        return narrow.Width > 0 ? [place] : narrow == arriving ? [narrow.Corner, place] : [place, narrow.Corner];
    }

    /// <summary>A narrow allowance that meets a wide one beside the wide edge itself; where that would be past the limit, the wide one ends in a step.</summary>
    private static ImmutableArray<Vector> RunningInto(AllowanceSide wide, AllowanceSide narrow, AllowanceSide arriving, CornerAngle angle)
    {
        ImmutableArray<Vector> path = [narrow.Foot, narrow.Foot - angle.LimitMicrometers * narrow.Along];
        RunCrossing? meeting = RunCrossing.First(path, wide.Run(0));
        if (meeting is null || (meeting.Place - wide.Corner).Norm > angle.LimitMicrometers)
            return Step(wide, narrow, arriving, angle);
        wide.Dropped = meeting.RunIndex;
        ImmutableArray<Vector> points = narrow.Width > 0 ? [meeting.Place] : [narrow.Corner, meeting.Place];
        return narrow == arriving ? points : [.. points.Reverse()];
    }

    /// <summary>The wide allowance ends square to its seam line at the corner, where the narrow cut edge meets that end.</summary>
    private static ImmutableArray<Vector> Step(AllowanceSide wide, AllowanceSide narrow, AllowanceSide arriving, CornerAngle angle)
    {
        Vector meeting = wide.Corner + narrow.Width / angle.Cosine * wide.Outward;
        return wide == arriving ? [wide.Foot, meeting] : [meeting, wide.Foot];
    }

    private static ImmutableArray<Vector> CutTip(AllowanceSide arriving, AllowanceSide leaving, Vector toTip, double limit) =>
        [CutEnd(arriving, toTip, limit), CutEnd(leaving, toTip, limit)];

    private static Vector CutEnd(AllowanceSide side, Vector toTip, double limit) =>
        side.Foot + (limit - side.Width * side.Outward.Dot(toTip)) / side.Along.Dot(toTip) * side.Along;

    /// <summary>An inner or straight corner: cut edges meet inside, or step where they cannot; three points where there is no room, for the clean-up to cut away.</summary>
    private static CornerJoin Inside(AllowanceSide arriving, AllowanceSide leaving, CornerAngle angle)
    {
        AllowanceSide wide = arriving.Width >= leaving.Width ? arriving : leaving;
        AllowanceSide narrow = wide == arriving ? leaving : arriving;
        double sine = Math.Abs(angle.Sine);
        if (sine <= Straight)
            return AsAsked(wide.Width == narrow.Width ? [wide.Foot] : Step(wide, narrow, arriving, angle));
        double wideBack = (narrow.Width - wide.Width * angle.Cosine) / sine;
        double narrowBack = (wide.Width - narrow.Width * angle.Cosine) / sine;
        if (wideBack >= 0 && wideBack <= wide.SegmentMicrometers / 2 && narrowBack <= narrow.SegmentMicrometers / 2)
            return AsAsked([arriving.Corner + angle.Tip(arriving, leaving)]);
        if (wideBack < 0 && narrow.Width * sine / angle.Cosine <= narrow.SegmentMicrometers / 2)
            return AsAsked(Step(wide, narrow, arriving, angle));
        return new CornerJoin([arriving.Foot, arriving.Corner, leaving.Foot], JoinOutcome.ThroughCorner);
    }

    /// <summary>Ends the bearer square through the point where its seam line, run on, meets the cut edge of the crossing seam. Bearer first; empty where that is past the limit.</summary>
    private static ImmutableArray<Vector> Squared(AllowanceSide bearer, AllowanceSide crossing, CornerAngle angle)
    {
        if (SeamLineMeets(crossing, bearer, angle) is not { } meeting)
            return [];
        crossing.Dropped = meeting.RunIndex;
        return [meeting.Place + bearer.Width * bearer.Outward, meeting.Place];
    }

    /// <summary>Ends the bearer in the mirror image, about its seam line, of the cut edge beside it. Bearer first; empty where that never reaches the bearer's cut edge.</summary>
    private static ImmutableArray<Vector> Reflected(AllowanceSide bearer, AllowanceSide beside, CornerAngle angle)
    {
        if (SeamLineMeets(beside, bearer, angle) is not { } meeting)
            return [];
        ImmutableArray<Vector> above = [meeting.Place, .. beside.Inner.Skip(meeting.RunIndex), beside.FarFoot];
        Vector onward = above[^1] - above[^2];
        if (onward.Norm > 0)
            above = above.Add(above[^1] + angle.ReachMicrometers * onward.Unit);
        ImmutableArray<Vector> folded = [.. above.Select(place => place.MirroredAbout(bearer.Corner, bearer.Along))];
        if (RunCrossing.First(folded, bearer.Run(angle.ReachMicrometers)) is not { } end)
            return [];
        beside.Dropped = meeting.RunIndex;
        bearer.Dropped = end.RunIndex;
        return [end.Place, .. folded.Take(end.PathIndex + 1).Reverse()];
    }

    private static RunCrossing? SeamLineMeets(AllowanceSide crossing, AllowanceSide bearer, CornerAngle angle)
    {
        ImmutableArray<Vector> onward = [bearer.Corner, bearer.Corner - angle.LimitMicrometers * bearer.Along];
        return RunCrossing.First(onward, crossing.Run(angle.ReachMicrometers));
    }
}
