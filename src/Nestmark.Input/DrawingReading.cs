using System.Collections.Immutable;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>What a drawing holds.</summary>
/// <param name="Pieces">Every piece that could be made, in the order of the file.</param>
/// <param name="Problems">Every problem and note.</param>
public sealed record DrawingReading(ImmutableArray<ListedPiece> Pieces, ImmutableArray<Problem> Problems);
