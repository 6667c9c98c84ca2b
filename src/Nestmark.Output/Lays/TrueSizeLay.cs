using System.Collections.Immutable;
using Nestmark.Output.Drawings;
using Nestmark.Yardage;

namespace Nestmark.Output.Lays;

/// <summary>One cloth's lay at true size; its origin is the lay's.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Pieces">Every placement.</param>
internal sealed record TrueSizeLay(ClothPlan Cloth, ImmutableArray<TrueSizePiece> Pieces)
{
    /// <summary>The area around all cutting lines; there must be a placement.</summary>
    public Area Bounds => Pieces.Select(piece => piece.Bounds).Aggregate((left, right) => left.Including(right));

    /// <summary>What the words of all pieces cover.</summary>
    public IEnumerable<Area> TextAreas => Pieces.SelectMany(piece => piece.TextAreas);

    /// <summary>Draws every placement of a cloth.</summary>
    public static TrueSizeLay Of(ClothPlan cloth, string garment) =>
        new(cloth, [.. Laid.AllOf(cloth).Select(laid => TrueSizePiece.Draw(laid, cloth.Cloth.Nap, garment))]);

    /// <summary>Cloth and pieces as one picture, each piece a group of its own.</summary>
    /// <param name="prefix">Starts every group's id.</param>
    public Drawing Picture(string prefix)
    {
        Drawing picture = new();
        ClothFrame.Draw(picture, Frame.TrueSize, Cloth, 0.3);
        foreach (TrueSizePiece piece in Pieces)
        {
            string id = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{prefix}{piece.Laid.Number}");
            picture.Add(new GroupFigure(id, PieceWords.Title(piece.Laid.Placement), DescriptionOf(piece.Laid), piece.Picture));
        }
        return picture;
    }

    private static string DescriptionOf(Laid laid) => PieceWords.Joined(
        PieceWords.Cut(laid.Placement.Piece), PieceWords.Copy(laid), PieceWords.Layers(laid.Placement), PieceWords.SideUp(laid.Placement));
}
