using System.Collections.Immutable;

namespace Nestmark.Yardage;

/// <summary>A change with which everything fits, tried with a verified layout.</summary>
/// <param name="Sentence">What is changed.</param>
/// <param name="Layout">How everything then lies on the leftovers at hand; <c>null</c> where the change is to the leftovers.</param>
/// <param name="Narrower">Allowances that are narrower in that layout.</param>
public sealed record FitHelp(string Sentence, ClothPlan? Layout, ImmutableArray<NarrowerAllowance> Narrower);
