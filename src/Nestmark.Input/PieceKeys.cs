using Nestmark.Input.Yaml;
using Nestmark.Pieces;

namespace Nestmark.Input;

/// <summary>Where the keys of a piece stand, so that faults found later point at the right one.</summary>
/// <param name="Name">The piece's own key.</param>
/// <param name="Path">"pieces.NAME".</param>
/// <param name="Map">Its keys.</param>
/// <param name="Shape">The key of its shape.</param>
internal sealed record PieceKeys(TextNode Name, string Path, MapNode Map, MapEntry Shape)
{
    /// <summary>The cloth it is cut from here, with the keys that hold for that cloth only.</summary>
    public required ClothCut Cloth { get; init; }

    /// <summary>Where the piece stands: its own key, or that of the cloth where several are listed.</summary>
    public (JobNode Node, string Item) Self => Cloth is { Own: not null, NamedAt: JobNode at } ? (at, Cloth.NamedIn) : (Name, Path);

    /// <summary>The node to point at, and its path. A subject without a key of its own comes from the shape.</summary>
    public (JobNode Node, string Item) PlaceOf(PieceSubject subject)
    {
        if (Find(Cloth.Own?.Map, subject) is MapEntry own)
            return (own.Value, Cloth.NamedIn + "." + own.Key.Text);
        MapEntry entry = Find(Map, subject) ?? Shape;
        return (entry.Value, Path + "." + entry.Key.Text);
    }

    /// <summary>Whether a subject is described by the shape, and so perhaps in a drawing.</summary>
    public bool IsInShape(PieceSubject subject) => Find(Cloth.Own?.Map, subject) is null && (Find(Map, subject) ?? Shape) == Shape;

    private static MapEntry? Find(MapNode? map, PieceSubject subject)
    {
        string? key = subject switch
        {
            PieceSubject.Cut => "cut",
            PieceSubject.Seam => "seam",
            PieceSubject.Edges => "edges",
            PieceSubject.Fold => "fold",
            PieceSubject.Grain => "grain",
            _ => null,
        };
        return map?.Entries.FirstOrDefault(candidate => candidate.Key.Text == key);
    }
}
