using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Pieces.Seams;

namespace Nestmark.Yardage.Seams;

/// <summary>Seams in words, the same in every output.</summary>
public static class SeamWords
{
    /// <summary>A small difference: "6 mm" to the tenth, or <c>1/4"</c> to the sixteenth.</summary>
    public static string Small(Length length, MeasureSystem system)
    {
        Length size = length < Length.Zero ? -length : length;
        return system == MeasureSystem.Imperial
            ? LengthWords.Tape(size, system)
            : Math.Round(size.Micrometers / 1000m, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture) + " mm";
    }

    /// <summary>A ratio as the trade says it: "1.5 : 1", to the hundredth.</summary>
    public static string Ratio(double ratio) => ratio.ToString("0.##", CultureInfo.InvariantCulture) + " : 1";

    /// <summary>What was found: "meets", "within 2 mm", "6 mm apart".</summary>
    public static string Verdict(SeamReport report, MeasureSystem system) => report.Walk.Verdict switch
    {
        SeamVerdict.Meets => "meets",
        SeamVerdict.Near => "within " + Small(report.Walk.Difference, system),
        _ => Small(report.Walk.Difference, system) + (report.BrokenByAlteration ? " apart since it was altered" : " apart"),
    };

    /// <summary>What is taken up: "eased 12 mm", "gathered 13.3 cm", or nothing.</summary>
    public static string TakenUp(SeamReport report, MeasureSystem system) => report.Seam.Seam.TakeUp is not { } takeUp
        ? ""
        : $"{Done(takeUp.Kind)} {(report.Walk.TakenUp < Length.FromCentimeters(3) ? Small(report.Walk.TakenUp, system) : LengthWords.Tape(report.Walk.TakenUp, system))}";

    /// <summary>The lone fact of a seam whose sides are apart.</summary>
    public static string Apart(SeamReport report, MeasureSystem system)
    {
        SeamWalk walk = report.Walk;
        string takenUp = report.Seam.Seam.TakeUp is null ? "" : $", {TakenUp(report, system)}";
        string what = $"The seam {report.Title} does not meet: {walk.First} is {Exact(walk.FirstLength, system)}, {walk.Second} {Exact(walk.SecondLength, system)}{takenUp}; "
            + $"that is {Small(walk.Difference, system)} apart, {Small(report.Seam.Seam.Tolerance, system)} being allowed.";
        string history = report.Before is not { } before ? ""
            : report.BrokenByAlteration ? $" Before the alterations it met within {Small(before.Difference, system)}."
            : $" Before the alterations it was {Small(before.Difference, system)} apart.";
        return report.Turns.LastOrDefault() is { Kind: SeamTurnKind.Broken } turn ? $"{what}{history} What broke it: {turn.Alteration} ({Place(turn)})." : what + history;
    }

    /// <summary>What an alteration did to a seam, a sentence: "The seam side M was broken by front: widened 2 cm at the fold (job.yaml:12), 20 mm apart."</summary>
    public static string Turn(SeamReport report, SeamTurn turn, MeasureSystem system) => turn.Kind == SeamTurnKind.Broken
        ? $"The seam {report.Title} was broken by {turn.Alteration} ({Place(turn)}): {Small(turn.Difference, system)} apart."
        : $"The seam {report.Title} was mended by {turn.Alteration} ({Place(turn)}): within {Small(turn.Difference, system)}.";

    /// <summary>What would make the sides meet.</summary>
    public static string Correction(SeamReport report, MeasureSystem system)
    {
        SeamWalk walk = report.Walk;
        bool firstLonger = walk.Difference > Length.Zero;
        string amount = Small(walk.Difference, system);
        if (walk.SeemsHalved)
            return "One side is half a piece on the fold; write 2 x before its edges if both halves are sewn here.";
        string cut = Cut(report, amount);
        return report.Seam.Seam.TakeUp is not { } takeUp
            ? $"{cut}, or ease it in (ease: {amount}{(firstLonger ? "" : ", on: second")})."
            : firstLonger == (takeUp.Side == SeamSide.First)
                ? $"{cut}, or take {amount} more up."
                : $"{cut}, or take {amount} less up.";
    }

    /// <summary>Which side to lengthen or shorten: "Lengthen back.B-C by 6 mm, or shorten front.B-C by as much". Plain lengths are cut to fit.</summary>
    private static string Cut(SeamReport report, string amount)
    {
        Seam seam = report.Seam.Seam;
        bool firstLonger = report.Walk.Difference > Length.Zero;
        (ImmutableArray<SeamTerm> longer, ImmutableArray<SeamTerm> shorter) = firstLonger ? (seam.First, seam.Second) : (seam.Second, seam.First);
        string lengthen = $"engthen {Name(shorter)} by {amount}{InAll(shorter)}";
        string shorten = $"horten {Name(longer)} by {amount}{InAll(longer)}";
        return IsPlain(longer) ? "L" + lengthen : IsPlain(shorter) ? "S" + shorten : $"L{lengthen}, or s{shorten}";
    }

    private static string Place(SeamTurn turn) => string.Create(CultureInfo.InvariantCulture, $"{turn.Where.File}:{turn.Where.Line}");

    private static string Name(ImmutableArray<SeamTerm> side) => string.Join(" + ", side.Select(term => term.Text));

    private static string InAll(ImmutableArray<SeamTerm> side) => side.Length > 1 || side[0].Times > 1 ? " in all" : "";

    private static bool IsPlain(ImmutableArray<SeamTerm> side) => side.All(term => !term.IsRun);

    /// <summary>A length along a seam: to the tenth of a millimeter, or the sixteenth of an inch.</summary>
    public static string Exact(Length length, MeasureSystem system) => system == MeasureSystem.Imperial
        ? LengthWords.Tape(length, system)
        : Math.Round(length.Micrometers / 10_000m, 2, MidpointRounding.AwayFromZero).ToString("0.0#", CultureInfo.InvariantCulture) + " cm";

    /// <summary>A notch by its name, or by how far along it lies: "12.5 cm along".</summary>
    public static string Notch(NotchAlong notch, MeasureSystem system)
    {
        string along = Exact(Length.FromMillimeters(notch.AlongMillimeters), system) + " along";
        return notch.Name.Length == 0 ? along : $"{notch.Name} ({along})";
    }

    private static string Done(TakeUpKind kind) => kind switch
    {
        TakeUpKind.Ease => "eased",
        TakeUpKind.Gather => "gathered",
        _ => "pleated",
    };
}
