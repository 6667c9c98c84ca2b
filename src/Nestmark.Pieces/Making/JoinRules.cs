namespace Nestmark.Pieces.Making;

/// <summary>What holds for every bend of a cutting line.</summary>
/// <param name="PointLimitRatio">1 or more.</param>
/// <param name="TightBends">How the raw ring passes bends without room.</param>
internal readonly record struct JoinRules(double PointLimitRatio, TightBend TightBends);
