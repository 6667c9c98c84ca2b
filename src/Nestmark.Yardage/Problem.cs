using System.Globalization;

namespace Nestmark.Yardage;

/// <summary>Something the user must know or mend.</summary>
/// <param name="Severity">Whether planning can go on.</param>
/// <param name="Where">The place.</param>
/// <param name="What">What is wrong and what was expected; one sentence.</param>
/// <param name="Hint">The remedy; one sentence, perhaps empty.</param>
public sealed record Problem(Severity Severity, Place Where, string What, string Hint)
{
    /// <summary>"file:line:column: What Hint", as compilers write it.</summary>
    public override string ToString() =>
        string.Create(CultureInfo.InvariantCulture, $"{Where}: {What}{(Hint.Length > 0 ? " " + Hint : "")}");
}
