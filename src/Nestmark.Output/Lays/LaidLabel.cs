using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;

namespace Nestmark.Output.Lays;

/// <summary>The label of a placement at true size, and small ones for parts that are read alone.</summary>
internal static class LaidLabel
{
    private const double SmallSize = 4;

    /// <summary>Everything one must know about the piece.</summary>
    public static TextBlock Large(Laid laid, string garment)
    {
        List<TextLine> lines =
        [
            new(PieceWords.Title(laid.Placement), 14, FontWeight.Bold),
            new(PieceWords.Joined(PieceWords.Cut(laid.Placement.Piece), laid.Placement.Contact == FoldContact.OnFold ? "" : PieceWords.Layers(laid.Placement)), 8),
            new(PieceWords.Joined("no. " + laid.Number.ToString(CultureInfo.InvariantCulture), PieceWords.Copy(laid), garment), 6),
        ];
        if (laid.Placement.Turn.Facing == Facing.Flipped)
            lines.Insert(1, new TextLine(PieceWords.WrongSideUp.ToUpperInvariant(), 9, FontWeight.Bold));
        return new TextBlock([.. lines]);
    }

    /// <summary>Enough to know the piece by.</summary>
    public static TextBlock Small(Laid laid)
    {
        List<TextLine> lines = [new(PieceWords.Title(laid.Placement), SmallSize, FontWeight.Bold)];
        if (PieceWords.Copy(laid) is { Length: > 0 } copy)
            lines.Add(new TextLine(copy, SmallSize * 0.75));
        if (laid.Placement.Turn.Facing == Facing.Flipped)
            lines.Add(new TextLine(PieceWords.WrongSideUp, SmallSize * 0.75));
        return new TextBlock([.. lines]);
    }
}
