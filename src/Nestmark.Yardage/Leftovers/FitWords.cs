using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>The sentences about leftovers.</summary>
internal static class FitWords
{
    /// <summary>No leftover of the cloth is listed.</summary>
    public static string NoLeftover(string cloth) => $"no leftover of {cloth} is listed.";

    /// <summary>A piece that alone fits none of them; certain.</summary>
    public static string FitsNone(Demand demand, RemnantTable table, MeasureSystem system)
    {
        Box room = demand.Turns[0].Apply(demand.Piece.CuttingLine).Bounds;
        string size = $"{LengthWords.Tape(Length.FromMicrometers(room.Width), system)} along the grain and {LengthWords.Tape(Length.FromMicrometers(room.Height), system)} across it";
        string leftovers = table.Places.Length == 1 ? $"the leftover {table.Places[0].Remnant.Name} has" : "no leftover has";
        return $"it is {size}, and {leftovers} {(table.Places.Length == 1 ? "no " : "")}room for it even alone.";
    }

    /// <summary>More area than there is; certain.</summary>
    public static string NotEnoughArea(double wantedSquareMillimeters, double thereSquareMillimeters) => string.Create(
        CultureInfo.InvariantCulture,
        $"the pieces are {wantedSquareMillimeters / 100:0} cm² in all, the leftovers only {thereSquareMillimeters / 100:0} cm².");

    /// <summary>Each fits alone, and no place was found for all together.</summary>
    public static string NotFound() => "it fits alone, but no place for it was found beside the others in the time given; that is no proof that there is none.";

    /// <summary>A leftover a little larger would do.</summary>
    public static string Larger(Length by, string direction, int leftovers, MeasureSystem system) =>
        $"Everything fits if {(leftovers == 1 ? "the leftover" : "each leftover")} is {LengthWords.Tape(by, system)} longer {direction} the grain.";

    /// <summary>A seam where the job allows one, perhaps with narrower allowances besides.</summary>
    public static string Pieced(IEnumerable<string> titles, Length allowance, ImmutableArray<NarrowerAllowance> narrower, MeasureSystem system) =>
        $"Everything fits with a seam across {string.Join(" and ", titles)}, cut in two with {LengthWords.Tape(allowance, system)} on both joined edges{(narrower.IsEmpty ? "" : ", and with " + Listed(narrower, system))}.";

    /// <summary>Allowances that the job lets be narrower.</summary>
    public static string Narrower(ImmutableArray<NarrowerAllowance> narrower, MeasureSystem system) => $"Everything fits with {Listed(narrower, system)}.";

    private static string Listed(ImmutableArray<NarrowerAllowance> narrower, MeasureSystem system) => string.Join(" and ", narrower.Select(one =>
        $"{(one.Least.Edge.Length == 0 ? "the seams" : one.Least.Edge)} of {one.Piece} at {LengthWords.Tape(one.Least.Width, system)} instead of {LengthWords.Tape(one.Now, system)}"));

    /// <summary>Rules of matching that leftovers do not keep; a sentence and the remedy.</summary>
    public static (string What, string Hint) NotKept(string cloth, ImmutableArray<string> rules) => (
        $"Leftovers of {cloth}, and what is bought beside them, are laid as plain cloth; not kept: {string.Join("; ", rules)}.",
        "Slide the pieces until the print meets before you cut, or lay all of them on cloth to buy, where it is matched.");

    /// <summary>Piece and size.</summary>
    public static string TitleOf(Demand demand) => demand.Size.Length == 0 ? demand.Piece.Name : demand.Piece.Name + " " + demand.Size;

    /// <summary>Piece and size.</summary>
    public static string TitleOf(Unplaced unplaced) => unplaced.Size.Length == 0 ? unplaced.Piece : unplaced.Piece + " " + unplaced.Size;
}
