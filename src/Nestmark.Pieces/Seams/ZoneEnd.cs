using Nestmark.Geometry;

namespace Nestmark.Pieces.Seams;

/// <summary>Where a zone of gathers begins or ends: at a named notch, at the so-manieth notch of the side, or at a distance from its start.</summary>
/// <param name="Notch">Name of a notch; empty for the other two.</param>
/// <param name="Number">Number of a notch from 1, in the order of walking; 0 for the other two.</param>
/// <param name="Distance">From the start of the side; counts where neither notch is given.</param>
public sealed record ZoneEnd(string Notch, int Number, Length Distance);
