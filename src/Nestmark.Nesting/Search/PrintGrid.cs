using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Nesting.Matching;

namespace Nestmark.Nesting.Search;

/// <summary>Where the print lets tied items lie: at whole repeats from a base that their group's phase decides.</summary>
/// <remarks>
/// A lay has one number for each group, and one more (the first) for x of a crosswise bar. A group is free in the repeat, or bound to some phases.
/// Along the cloth the first item of a group that is laid decides its phase; across it a phase is chosen that leaves every item some place.
/// </remarks>
internal sealed class PrintGrid
{
    private const int Sweep = 48;

    private readonly HeldItem?[] _items;
    private readonly PrintPhase[] _groups;
    private readonly double[][] _feasible;

    private PrintGrid(HeldItem?[] items, PrintPhase[] groups)
    {
        _items = items;
        _groups = groups;
        _feasible = [.. groups.Select((group, i) => group.Axis == ClothAxis.Along ? [] : Feasible(group, i))];
        IsBarFree = groups.All(group => group.Axis == ClothAxis.Across || group.Allowed.IsEmpty)
            && items.All(item => item is null || item.Along < 0 || item.Ways.All(way => way.AlongSign == item.Ways[0].AlongSign && way.AlongSign > 0));
    }

    /// <summary>How many numbers a lay has: x of a bar, then a phase for each group.</summary>
    public int Count => 1 + _groups.Length;

    /// <summary>Whether nothing depends on where the crosswise bars lie.</summary>
    public bool IsBarFree { get; }

    /// <summary>Whether anything is tied along the cloth.</summary>
    public bool HoldsAnyAlong => _groups.Any(group => group.Axis == ClothAxis.Along);

    /// <summary>Reads a task; <c>null</c> when the print holds nothing.</summary>
    public static PrintGrid? Of(LayTask task)
    {
        if (task.Print is null || task.Demands.All(demand => demand.Hold is null))
            return null;
        List<PrintPhase> groups = [];
        List<string> names = [];
        HeldItem?[] items = new HeldItem?[task.Demands.Length];
        for (int i = 0; i < items.Length; i++)
        {
            if (task.Demands[i].Hold is { } hold)
            {
                HeldWay[] ways = [.. task.Demands[i].Turns.SelectMany(turn => WaysOf(task, task.Demands[i], turn))];
                items[i] = new HeldItem(
                    Joined(ClothAxis.Along, hold.Along, i), hold.Along?.ShiftMicrometers ?? 0, Joined(ClothAxis.Across, hold.Across, i), hold.Across?.ShiftMicrometers ?? 0,
                    ways, task.Demands[i].NapGroup.Length > 0);
            }
        }
        return new PrintGrid(items, [.. groups]);

        int Joined(ClothAxis axis, AxisHold? hold, int item)
        {
            if (hold is null)
                return -1;
            int index = names.IndexOf(hold.Group);
            if (index < 0)
            {
                index = names.Count;
                names.Add(hold.Group);
                groups.Add(new PrintPhase(axis, hold.RepeatMicrometers, hold.Phases, []));
            }
            groups[index] = groups[index] with { Members = groups[index].Members.Add(item) };
            return index;
        }
    }

    private static IEnumerable<HeldWay> WaysOf(LayTask task, Demand demand, Turn turn)
    {
        Box room = turn.Apply(demand.Piece.CuttingLine).Bounds;
        return HeldSeats.Of(task, demand, turn).Select(seat => new HeldWay(
            turn, seat, room, HeldTurns.SignOf(turn, ClothAxis.Along), HeldTurns.SignOf(turn, ClothAxis.Across),
            task.Print!.Bars[HeldSeats.BandOf(task.Surface, room, seat)]?.Micrometers ?? 0));
    }

    /// <summary>The items of the first group that has no phase in which each of them finds a place across the lay; empty when all have one.</summary>
    public ImmutableArray<int> Stuck()
    {
        int group = Enumerable.Range(0, _groups.Length).Where(i => _groups[i].Axis == ClothAxis.Across && _feasible[i].Length == 0).DefaultIfEmpty(-1).First();
        return group < 0 ? [] : _groups[group].Members;
    }

    /// <summary>Phases to begin a lay with: across the cloth some that work, along it none until an item is laid.</summary>
    /// <param name="phases">Gets them.</param>
    /// <param name="attempt">Other attempts begin with other phases.</param>
    public void Begin(Span<double> phases, int attempt)
    {
        phases[0] = double.NaN;
        for (int i = 0; i < _groups.Length; i++)
        {
            ImmutableArray<long> allowed = _groups[i].Allowed;
            phases[i + 1] = _groups[i].Axis == ClothAxis.Across ? (_feasible[i].Length == 0 ? 0 : _feasible[i][attempt % _feasible[i].Length])
                : allowed.IsEmpty ? double.NaN : allowed[attempt % allowed.Length];
        }
    }

    /// <summary>Whether a way of an item has a place across the lay.</summary>
    public bool HasPlace(ReadOnlySpan<double> phases, int item, int way) =>
        _items[item] is not { Across: >= 0 } held || HasPlace(held, way, phases[held.Across + 1]);

    /// <summary>Whether the print holds an item along the cloth at present.</summary>
    public bool HoldsAlong(ReadOnlySpan<double> phases, int item) =>
        _items[item] is { Along: >= 0 } held && !double.IsNaN(phases[0]) && !double.IsNaN(phases[held.Along + 1]);

    /// <summary>Whether the print holds an item across the cloth.</summary>
    public bool HoldsAcross(int item) => _items[item] is { Across: >= 0 };

    /// <summary>The repeat of an item that is held along the cloth.</summary>
    public double RepeatAlong(int item) => _groups[_items[item]!.Along].Repeat;

    /// <summary>The repeat of an item that is held across the cloth.</summary>
    public double RepeatAcross(int item) => _groups[_items[item]!.Across].Repeat;

    /// <summary>The first allowed place along the cloth at or behind x.</summary>
    public double AtOrBehind(ReadOnlySpan<double> phases, int item, int way, double x)
    {
        if (!HoldsAlong(phases, item))
            return x;
        double origin = AlongOrigin(phases, item, way);
        double repeat = RepeatAlong(item);
        return origin + repeat * Math.Ceiling((x - origin) / repeat - 1e-7);
    }

    /// <summary>The allowed place nearest to a place and within bounds; where the bounds hold none, the first behind the lower one.</summary>
    public (double X, double Y) Nearest(ReadOnlySpan<double> phases, int item, int way, double x, double y, double lowX, double highX)
    {
        if (_items[item] is not { } held)
            return (x, y);
        if (HoldsAlong(phases, item))
            x = Nearest(AlongOrigin(phases, item, way), RepeatAlong(item), x, lowX, highX);
        if (held.Across >= 0 && held.Ways[way].Seat.LowY < held.Ways[way].Seat.HighY)
            y = Nearest(AcrossOrigin(held, way, phases[held.Across + 1]), RepeatAcross(item), y, held.Ways[way].Seat.LowY, held.Ways[way].Seat.HighY);
        return (x, y);
    }

    /// <summary>Where a newly laid item lies decides the phases that were open.</summary>
    public void Settle(Span<double> phases, int item, int way, double x)
    {
        if (_items[item] is not { Along: >= 0 } held)
            return;
        ref double phase = ref phases[held.Along + 1];
        int sign = held.Ways[way].AlongSign;
        if (double.IsNaN(phases[0]))
            phases[0] = double.IsNaN(phase) ? 0 : x - sign * (held.AlongShift + phase);
        if (double.IsNaN(phase))
            phase = sign * (x - phases[0]) - held.AlongShift;
    }

    /// <summary>Gives a group another phase, or the bars another place.</summary>
    public void Disturb(Span<double> phases, RandomStream random)
    {
        int index = random.Below(Count);
        if (index == 0)
        {
            double most = _groups.Where(group => group.Axis == ClothAxis.Along).Select(group => group.Repeat).DefaultIfEmpty(0).Max();
            phases[0] += most * random.Ratio();
            return;
        }
        PrintPhase group = _groups[index - 1];
        double[] across = _feasible[index - 1];
        if (group.Axis == ClothAxis.Across && across.Length == 0)
            return;
        phases[index] = group.Axis == ClothAxis.Across ? across[random.Below(across.Length)]
            : group.Allowed.IsEmpty ? group.Repeat * random.Ratio() : group.Allowed[random.Below(group.Allowed.Length)];
    }

    /// <summary>Lets an item that has moved along take its group with it, where the group is free.</summary>
    public void Lead(Span<double> phases, int item, int way, double x)
    {
        if (_items[item] is { Along: >= 0 } held && _groups[held.Along].Allowed.IsEmpty)
            phases[held.Along + 1] = held.Ways[way].AlongSign * (x - phases[0]) - held.AlongShift;
    }

    /// <summary>The lay is moved along the cloth.</summary>
    public static void Move(Span<double> phases, double by)
    {
        if (phases.Length > 0)
            phases[0] += by;
    }

    /// <summary>The ways of a held item; <c>null</c> for a free one.</summary>
    public HeldWay[]? WaysOf(int item) => _items[item]?.Ways;

    private double AlongOrigin(ReadOnlySpan<double> phases, int item, int way)
    {
        HeldItem held = _items[item]!;
        return phases[0] + held.Ways[way].AlongSign * (held.AlongShift + phases[held.Along + 1]);
    }

    private static double AcrossOrigin(HeldItem held, int way, double phase) =>
        held.Ways[way].Bar + held.Ways[way].AcrossSign * (held.AcrossShift + phase);

    private static double Nearest(double origin, double repeat, double value, double low, double high)
    {
        double place = origin + repeat * Math.Round((value - origin) / repeat);
        if (place > high + 0.5)
            place = origin + repeat * Math.Floor((high + 0.5 - origin) / repeat);
        return place < low - 0.5 ? origin + repeat * Math.Ceiling((low - 0.5 - origin) / repeat) : place;
    }

    private bool HasPlace(HeldItem held, int way, double phase)
    {
        Seat seat = held.Ways[way].Seat;
        double slack = seat.LowY == seat.HighY ? 50 : 0.5;
        double place = Nearest(AcrossOrigin(held, way, phase), _groups[held.Across].Repeat, seat.LowY, seat.LowY - slack, seat.HighY + slack);
        return place >= seat.LowY - slack && place <= seat.HighY + slack;
    }

    /// <summary>Phases across the cloth in which every member has a place in some way: those allowed, or where some item touches an end of its seat, or an even sweep.</summary>
    private double[] Feasible(PrintPhase group, int index)
    {
        IEnumerable<double> tried = group.Allowed.IsEmpty
            ? group.Members.SelectMany(EndsOf).Concat(Enumerable.Range(0, Sweep).Select(i => group.Repeat * i / Sweep))
            : group.Allowed.Select(phase => (double)phase);
        return [.. tried.Where(IsGood)];

        IEnumerable<double> EndsOf(int item) => _items[item]!.Ways.SelectMany(way => new[] { way.Seat.LowY, way.Seat.HighY }
            .Select(y => way.AcrossSign * (y - way.Bar) - _items[item]!.AcrossShift));

        bool IsGood(double phase) => group.Members.All(item => _items[item]!.Ways.GroupBy(way => _items[item]!.KeepsHeading ? NapHeading.Of(way.Turn) : 0)
            .All(heading => heading.Any(way => HasPlace(_items[item]! with { Across = index }, Array.IndexOf(_items[item]!.Ways, way), phase))) && _items[item]!.Ways.Length > 0);
    }
}
