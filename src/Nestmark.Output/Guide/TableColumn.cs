using Nestmark.Output.Drawings;

namespace Nestmark.Output.Guide;

/// <summary>A column of a table.</summary>
/// <param name="Group">Heading over neighboring columns of the same group; may be empty.</param>
/// <param name="Heading">Its own heading.</param>
/// <param name="ShareRatio">Its part of the table's width; all parts together make 1.</param>
/// <param name="Anchor">Start for words, end for numbers.</param>
internal sealed record TableColumn(string Group, string Heading, double ShareRatio, Anchor Anchor);
