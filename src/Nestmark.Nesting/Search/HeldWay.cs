using Nestmark.Geometry;

namespace Nestmark.Nesting.Search;

/// <summary>How the print holds an item in one of its ways: its place is base + sign × (shift + phase), and whole repeats from there.</summary>
/// <param name="Turn">The turn.</param>
/// <param name="Seat">Where it may lie.</param>
/// <param name="Room">Bounds of its cutting line.</param>
/// <param name="AlongSign">Which way its coordinate runs along the cloth.</param>
/// <param name="AcrossSign">Which way its coordinate runs across the cloth.</param>
/// <param name="Bar">y of a bar in its band, micrometers.</param>
internal readonly record struct HeldWay(Turn Turn, Seat Seat, Box Room, int AlongSign, int AcrossSign, double Bar);
