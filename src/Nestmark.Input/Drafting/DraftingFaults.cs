using Nestmark.Input.Quantities;

namespace Nestmark.Input.Drafting;

/// <summary>The messages about pieces that are drafted from measures.</summary>
internal static class DraftingFaults
{
    public static Fault CutIsCounted(string shape) => new($"How often a {shape.Replace('_', ' ')} is cut is counted.", "Take cut out; the plan says how many there are.");

    public static Fault PartForm(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected a part of a circle from 10 degrees to the whole.", "Write full, 3/4, half, quarter or an angle as 120 deg.");

    public static Fault FromForm(string text) => new(
        $"Found \"{QuantityFaults.Shown(text)}\"; expected what the bias strip is cut from.", "Write from: strips, from: square, or the sides of a leftover as 60 x 45.");

    public static Fault FacingForm() => new("A facing is taken from one run of edges of one piece.", "Write of: front.D-E or of: front.D-E-F.");

    public static Fault Circle(IEnumerable<string> names) => new(
        $"These pieces are measured along each other in a circle: {Spelling.ListOf([.. names])}.", "Give one of them a plain length.");

    public static Fault ChainTooLong() => new("More than 50 pieces are measured along each other one after the other.", "Give one of them a plain length.");

    public static Fault NotMeasured(string piece, string missing) => new(
        $"{piece} cannot be drafted, since {missing} could not be made.", "Mend that piece first.");

    public static Fault SizeMissing(string size) => new($"There is no measure for size {size}.", "Give one for every size of the job.");

    public static Fault SizeUnknown(string size, IReadOnlyCollection<string> sizes) => new(
        $"There is no size \"{QuantityFaults.Shown(size)}\" in this job.", Spelling.Suggest(size, sizes));

    public static Fault OutOfRange(string title) => new($"{title}: a measure comes to nothing or to more than 500 m.", "Check the lengths, counts and their units.");
}
