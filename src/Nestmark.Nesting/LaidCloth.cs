using System.Collections.Immutable;

namespace Nestmark.Nesting;

/// <summary>A cloth that has been laid.</summary>
/// <param name="Option">How it is spread.</param>
/// <param name="Marker">Its marker, verified.</param>
/// <param name="OtherForms">Where the form was to be chosen: the best marker found in each other form, the one that needs least cloth first; searched for a shorter time.</param>
public sealed record LaidCloth(LayOption Option, Marker Marker, ImmutableArray<Marker> OtherForms);
