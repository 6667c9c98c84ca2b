using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Input;

/// <summary>Widths as asked for on the command line, or why there are none.</summary>
/// <param name="Widths">In the order given, each once; empty when something is wrong.</param>
/// <param name="Message">What is wrong and what was expected; empty when nothing is.</param>
public sealed record WidthsReading(ImmutableArray<Length> Widths, string Message);
