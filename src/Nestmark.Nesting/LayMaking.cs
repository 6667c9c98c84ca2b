using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting.Verification;

namespace Nestmark.Nesting;

/// <summary>From the options of a cloth to its marker: a quick trial of every option, a longer one of the best, and the rest of the allowance for the winner.</summary>
/// <remarks>All forms of lay go through <see cref="MarkerMaking"/>; here is only what chooses between them. Trials run by parts of the allowance, so that steps give the same marker again.</remarks>
public static class LayMaking
{
    private const int MostFinalists = 3;
    private const double TrialsEnd = 0.4;

    /// <summary>Lays the cloth.</summary>
    /// <param name="options">One or more.</param>
    /// <param name="settings">How the searches run, all together.</param>
    public static LaidCloth Make(ImmutableArray<LayOption> options, SearchSettings settings) => Make(options, settings, MarkerMaking.Make);

    /// <summary>The same with another search.</summary>
    /// <param name="options">One or more.</param>
    /// <param name="settings">How the searches run, all together.</param>
    /// <param name="makeMarker">What makes the marker of one task.</param>
    public static LaidCloth Make(ImmutableArray<LayOption> options, SearchSettings settings, Func<LayTask, SearchSettings, Marker> makeMarker)
    {
        if (options.Length == 1)
            return new LaidCloth(options[0], Lay(options[0], settings), []);
        List<Trial> finalists = Finalists(options, settings, Lay);
        double share = TrialsEnd / finalists.Count;
        for (int i = 0; i < finalists.Count; i++)
        {
            Marker marker = Lay(finalists[i].Option, Quiet(settings, i * share, (i + 1) * share));
            if (marker.ClothLength < finalists[i].Marker.ClothLength)
                finalists[i] = finalists[i] with { Marker = marker };
        }
        finalists.Sort((left, right) => Order(left, right));
        Trial best = finalists[0];
        Marker last = Lay(best.Option, settings with { Stop = settings.Stop.Part(TrialsEnd, 1) });
        if (last.ClothLength < best.Marker.ClothLength)
            best = best with { Marker = last };
        return new LaidCloth(best.Option, best.Marker, [.. finalists.Skip(1).Select(trial => trial.Marker).Where(marker => marker.Surface.Form != best.Marker.Surface.Form).DistinctBy(marker => marker.Surface.Form)]);

        Marker Lay(LayOption option, SearchSettings share) => LayMaking.Lay(option, share, makeMarker);
    }

    /// <summary>The best option of each form; of a single form the best few.</summary>
    private static List<Trial> Finalists(ImmutableArray<LayOption> options, SearchSettings settings, Func<LayOption, SearchSettings, Marker> lay)
    {
        List<Trial> trials = [.. options.Select(option => new Trial(option, lay(option, Greedy(settings))))];
        trials.Sort((left, right) => Order(left, right));
        bool severalForms = options.Any(option => option.Form != options[0].Form);
        return severalForms ? [.. trials.DistinctBy(trial => trial.Option.Form)] : [.. trials.Take(MostFinalists)];
    }

    /// <summary>Fewer pieces left out first, then less cloth, then fewer placements.</summary>
    private static int Order(Trial left, Trial right)
    {
        int order = left.Marker.Unplaced.Length.CompareTo(right.Marker.Unplaced.Length);
        order = order != 0 ? order : left.Marker.ClothLength.CompareTo(right.Marker.ClothLength);
        return order != 0 ? order : left.Marker.Placements.Length.CompareTo(right.Marker.Placements.Length);
    }

    private static SearchSettings Greedy(SearchSettings settings) => settings with { Stop = new StepStop(0), Report = _ => { } };

    private static SearchSettings Quiet(SearchSettings settings, double from, double to) => settings with { Stop = settings.Stop.Part(from, to), Report = _ => { } };

    private static Marker Lay(LayOption option, SearchSettings settings, Func<LayTask, SearchSettings, Marker> makeMarker)
    {
        if (option.Sections.Length == 1)
            return makeMarker(option.Sections[0], settings);
        LayTask[] laid = [.. option.Sections.Where(section => !section.Demands.IsEmpty)];
        if (laid.Length < 2)
            return makeMarker((laid.Length == 0 ? option.Sections[1] : laid[0]) with { Impossible = option.Impossible }, settings);
        double folded = AreaOf(option.Sections[0]);
        double share = folded / Math.Max(1, folded + AreaOf(option.Sections[1]));
        Marker first = makeMarker(option.Sections[0], settings with { Stop = settings.Stop.Part(0, share), Report = _ => { } });
        Marker second = makeMarker(SameWayUp(option, first), settings with { Stop = settings.Stop.Part(share, 1), Report = After(settings.Report, first.LayLength) });
        return Joined(option, first, second);
    }

    /// <summary>Pieces of a size that lies in the first section too keep the way up that it has there.</summary>
    private static LayTask SameWayUp(LayOption option, Marker first)
    {
        Dictionary<string, int> headings = [];
        foreach ((Demand demand, Placement placement) in option.Sections[0].Demands.Zip(first.Placements).Where(pair => pair.First.NapGroup.Length > 0))
            headings[demand.NapGroup] = NapHeading.Of(placement.Turn);
        LayTask second = option.Sections[1];
        return second with { Demands = [.. second.Demands.Select(Kept)] };

        Demand Kept(Demand demand) => headings.TryGetValue(demand.NapGroup, out int heading)
            ? demand with { Turns = [.. demand.Turns.Where(turn => NapHeading.Of(turn) == heading)] }
            : demand;
    }

    private static Action<SearchProgress> After(Action<SearchProgress> report, Length before) =>
        progress => report(progress with { BestLayLength = progress.BestLayLength + before });

    /// <summary>Two sections as one marker, verified as such.</summary>
    private static Marker Joined(LayOption option, Marker folded, Marker open)
    {
        LaySurface surface = LaySurface.Mixed(open.Surface.UsableWidth, folded.LayLength);
        Length spare = SpareToMatch(option, folded, open);
        Point by = new((folded.LayLength + spare).Micrometers, 0);
        LayTask task = new(surface, option.Sections[0].Gap, option.Demands, option.Impossible) { Print = PrintOn(option, surface) };
        Marker joined = new(
            surface, open.LayLength == Length.Zero ? folded.LayLength : folded.LayLength + spare + open.LayLength,
            [.. folded.Placements, .. open.Placements.Select(placement => placement with { Offset = placement.Offset + by })], option.Impossible)
        {
            FirstBar = folded.FirstBar ?? BarBehind(task, open, by),
        };
        return MarkerVerifier.Violations(task with { Gap = Length.Zero }, joined).IsEmpty
            ? joined
            : throw new InvalidOperationException("Two sound sections did not make a sound lay. This is a fault of the program: please report it with the job.");
    }

    private static LayPrint? PrintOn(LayOption option, LaySurface surface) =>
        option.Sections.Select(section => section.Print).FirstOrDefault(print => print is not null) is { } known ? LayPrint.Of(known.Cloth, surface) : null;

    /// <summary>What lies between the sections, less than a repeat, so that the bars of the second go on from those of the first.</summary>
    private static Length SpareToMatch(LayOption option, Marker folded, Marker open)
    {
        if (folded.FirstBar is not { } first || open.FirstBar is not { } second || PrintOn(option, open.Surface)?.Cloth.Repeat?.Along is not { } repeat)
            return Length.Zero;
        return Length.FromMicrometers(LayPrint.Modulo((first - second - folded.LayLength).Micrometers, repeat.Micrometers));
    }

    private static Length? BarBehind(LayTask task, Marker open, Point by) => open.FirstBar is { } bar && task.Print?.Cloth.Repeat?.Along is { } repeat
        ? Length.FromMicrometers(LayPrint.Modulo(bar.Micrometers + by.X, repeat.Micrometers))
        : null;

    private static double AreaOf(LayTask task) => task.Demands.Sum(demand => demand.Piece.CuttingLine.AreaSquareMillimeters / task.Surface.Depth.TotalMillimeters);

    private sealed record Trial(LayOption Option, Marker Marker);
}
