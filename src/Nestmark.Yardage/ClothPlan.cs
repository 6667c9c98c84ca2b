using Nestmark.Cloths;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>The plan for one cloth.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Marker">Its marker, verified.</param>
/// <param name="Purchase">What to buy.</param>
public sealed record ClothPlan(Cloth Cloth, Marker Marker, Purchase Purchase);
