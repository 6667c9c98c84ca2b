using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Yardage.Charts;

/// <summary>What the search for a cell found.</summary>
/// <param name="LayLength">Length of cloth that its marker takes, verified; zero when nothing is cut or something cannot be.</param>
/// <param name="EfficiencyRatio">Its efficiency, 0 to 1.</param>
/// <param name="Unplaced">Pieces that cannot lie on this cloth.</param>
public sealed record ChartFinding(Length LayLength, double EfficiencyRatio, ImmutableArray<Unplaced> Unplaced);
