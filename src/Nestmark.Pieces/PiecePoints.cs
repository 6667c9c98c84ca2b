using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry;

namespace Nestmark.Pieces;

/// <summary>Points of a piece by name, on the seam line and not on the cutting line.</summary>
/// <remarks>Matching is judged where the pieces are sewn together: references/trade.md 6 ([GW-108], [TS-LAY], [MTILT]).</remarks>
public static class PiecePoints
{
    /// <summary>The name of the middle of a piece; of a piece for the fold of its fold edge, which is the center line.</summary>
    public const string Center = "center";

    private const string Numbered = "notch-";

    /// <summary>The place of a notch or mark by its name, of a corner by its letter, of a notch by its number ("notch-2"), or of the center; <c>null</c> for none.</summary>
    /// <param name="piece">The piece; of an unfolded one the half that was drawn is meant.</param>
    /// <param name="name">As the user writes it.</param>
    public static Point? Find(Piece piece, string name)
    {
        if (piece.Notches.FirstOrDefault(notch => notch.Name == name) is { } notch)
            return notch.OnSeamLine;
        if (piece.Marks.FirstOrDefault(mark => mark.Label == name) is { } mark)
            return mark.Place;
        if (piece.Corners.FirstOrDefault(corner => corner.Letter == name) is { } corner)
            return corner.Place;
        if (name is Center or "centre")
            return CenterOf(piece);
        bool isNumber = name.StartsWith(Numbered, StringComparison.Ordinal)
            & int.TryParse(name.AsSpan(Math.Min(name.Length, Numbered.Length)), NumberStyles.None, CultureInfo.InvariantCulture, out int number);
        return isNumber && number >= 1 && number <= piece.Notches.Length ? piece.Notches[number - 1].OnSeamLine : null;
    }

    /// <summary>Every name that <see cref="Find"/> knows on a piece.</summary>
    public static ImmutableArray<string> NamesOn(Piece piece) =>
    [
        .. piece.Notches.Select((notch, i) => notch.Name.Length > 0 ? notch.Name : Numbered + (i + 1).ToString(CultureInfo.InvariantCulture))
            .Concat(piece.Marks.Select(mark => mark.Label).Where(label => label.Length > 0))
            .Concat(piece.Corners.Select(corner => corner.Letter))
            .Append(Center).Distinct(),
    ];

    private static Point CenterOf(Piece piece)
    {
        Box box = piece.SeamLine.Bounds;
        bool isSymmetric = piece.FoldEdge is not null || piece.CenterLine is not null;
        return new Point((box.MinX + box.MaxX) / 2, isSymmetric ? 0 : (box.MinY + box.MaxY) / 2);
    }
}
