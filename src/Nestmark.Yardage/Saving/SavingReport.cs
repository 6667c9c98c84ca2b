using System.Collections.Immutable;

namespace Nestmark.Yardage.Saving;

/// <summary>What would change the cloth to buy most.</summary>
/// <param name="Ways">Those that need less, the greatest saving in length first.</param>
/// <param name="Tried">Every change that was laid, in words, with the name of its cloth: "shell: lay it open".</param>
public sealed record SavingReport(ImmutableArray<SavingWay> Ways, ImmutableArray<string> Tried);
