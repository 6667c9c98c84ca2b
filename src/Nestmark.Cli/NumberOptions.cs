using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace Nestmark.Cli;

/// <summary>Options with a number, read in the invariant culture and checked against their range.</summary>
/// <remarks>System.CommandLine alone would follow the machine's culture and take "1,5" for 15.</remarks>
internal static class NumberOptions
{
    /// <summary>An option with a whole number; absent when not given.</summary>
    public static Option<long?> Whole(string name, long least, long most, string description) => new(name)
    {
        Description = description,
        HelpName = "N",
        CustomParser = result => Parsed<long>(result, text => long.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out long number)
            && number >= least && number <= most ? number : null, Range("a whole number", least, most)),
    };

    /// <summary>An option with a decimal number; absent when not given.</summary>
    public static Option<double?> Decimal(string name, double least, double most, string description) => new(name)
    {
        Description = description,
        HelpName = "N",
        CustomParser = result => Parsed<double>(result, text => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
            && number >= least && number <= most ? number : null, Range("a number with a decimal point", least, most)),
    };

    private static T? Parsed<T>(ArgumentResult result, Func<string, T?> read, string expected)
        where T : struct
    {
        string text = result.Tokens.Count == 0 ? "" : result.Tokens[0].Value;
        T? number = read(text);
        if (number is null)
            result.AddError($"'{text}' is not what {((OptionResult)result.Parent!).Option.Name} takes: {expected}.");
        return number;
    }

    private static string Range(string kind, IFormattable least, IFormattable most) =>
        string.Create(CultureInfo.InvariantCulture, $"{kind} from {least} to {most}");
}
