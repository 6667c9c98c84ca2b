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
    /// <summary>The node to point at, and its path. A subject without a key of its own comes from the shape.</summary>
    public (JobNode Node, string Item) PlaceOf(PieceSubject subject)
    {
        MapEntry entry = EntryOf(subject);
        return (entry.Value, Path + "." + entry.Key.Text);
    }

    /// <summary>Whether a subject is described by the shape, and so perhaps in a drawing.</summary>
    public bool IsInShape(PieceSubject subject) => EntryOf(subject) == Shape;

    private MapEntry EntryOf(PieceSubject subject)
    {
        string key = subject switch
        {
            PieceSubject.Cut => "cut",
            PieceSubject.Seam => "seam",
            PieceSubject.Edges => "edges",
            PieceSubject.Fold => "fold",
            PieceSubject.Grain => "grain",
            _ => Shape.Key.Text,
        };
        return Map.Entries.FirstOrDefault(candidate => candidate.Key.Text == key) ?? Shape;
    }
}
