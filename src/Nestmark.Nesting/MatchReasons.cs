using Nestmark.Geometry;

namespace Nestmark.Nesting;

/// <summary>Why the rules of matching cannot be kept, and what would help: every such sentence. Those without a name go on after the name of the piece.</summary>
internal static class MatchReasons
{
    /// <summary>Rules that contradict each other.</summary>
    public static string Contradiction(string rule, Length miss) =>
        $"cannot keep \"{rule}\": the rules before it put it {Millimeters(miss)} beside that place. Take out one of the rules, or move the point.";

    /// <summary>A piece on the border that is tied to bars across as well.</summary>
    public static string BorderAndBars(string rule) =>
        $"cannot keep \"{rule}\" and match across the cloth as well, since the border leaves it only one place there. Keep one of the two.";

    /// <summary>An uneven print on both sides of a garment.</summary>
    public static string UnevenBothSides(string mirrored) =>
        $"cannot be matched crosswise: the two sides of {mirrored} are mirror images, and the print is uneven. Match it lengthwise only.";

    /// <summary>Center lines that would have to lie at different places of the repeat.</summary>
    public static string CentersOffBars() =>
        "cannot be matched on both sides: pieces cut on the fold are alike on both sides only with their center on a bar or between two, and the rules put a center elsewhere. Move a point, or match only lengthwise.";

    /// <summary>A piece on the bias.</summary>
    public static string Bias(string title) =>
        $"{title} lies at 45 degrees and cannot be matched; cut it along the grain, or take out its rules.";

    /// <summary>Two lengths of cloth on each other.</summary>
    public static string CrosswiseLay(string title) =>
        $"{title} is to be matched, and on cloth folded or cut across the bars of the two layers do not lie on each other; fold the cloth lengthwise or lay it open.";

    /// <summary>No turn is left.</summary>
    public static string NoTurn(string title) => $"{title} cannot lie the way its rules want on an uneven print; cut all its copies the same way round, or take out its rules.";

    /// <summary>Two layers whose bars miss each other.</summary>
    public static string FoldBesideBar(string title, string fold) =>
        $"{title} is to be matched crosswise, and the fold does not lie on a bar or in the middle between two, so the bars of the two layers miss each other; fold on one (lay: partial fold, fold_depth: {fold}), or lay the cloth open.";

    /// <summary>Two layers of an uneven print.</summary>
    public static string UnevenFold(string title) =>
        $"{title} is to be matched crosswise, and the two layers of a folded uneven print are mirror images; lay the cloth open.";

    /// <summary>A fold on a bar where the rule wants the middle, or the other way round.</summary>
    public static string WrongCenter(string title, string fold) =>
        $"{title} lies on the fold, and its rules want another place of the repeat there; fold half a repeat farther (lay: partial fold, fold_depth: {fold}), or lay the cloth open.";

    /// <summary>A piece that has no room at its place of the border.</summary>
    public static string OffBorder(string title) =>
        $"{title} does not fit with its point where the border begins: its allowance would reach beyond the usable width, or it is too deep, or two layers have no border there. Turn its grain across, make the allowance narrower, or lay the cloth open.";

    /// <summary>Pieces whose matched places leave no room across the lay.</summary>
    public static string NoRoomOnBars(string title) =>
        $"{title} fits the lay, but not at a place that matches the other pieces; lay the cloth open, take wider cloth, or match it lengthwise only.";

    private static string Millimeters(Length length) => length.TotalMillimeters.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture) + " mm";
}
