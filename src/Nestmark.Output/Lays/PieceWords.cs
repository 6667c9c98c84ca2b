using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Output.Lays;

/// <summary>The words that stand on and beside a placement; the one file of them.</summary>
internal static class PieceWords
{
    /// <summary>Printed on pieces that lie on the fold.</summary>
    public const string OnFold = "place on fold";

    /// <summary>Printed on pieces that are turned over.</summary>
    public const string WrongSideUp = "wrong side up";

    /// <summary>"front M", or "front".</summary>
    public static string Title(Placement placement) =>
        placement.Size.Length == 0 ? placement.Piece.Name : placement.Piece.Name + " " + placement.Size;

    /// <summary>"size M", or nothing.</summary>
    public static string Size(Placement placement) => placement.Size.Length == 0 ? "" : "size " + placement.Size;

    /// <summary>"copy 1 of 2", or nothing for the only one.</summary>
    public static string Copy(Laid laid) => laid.Copies == 1
        ? ""
        : string.Create(CultureInfo.InvariantCulture, $"copy {laid.Placement.Copy} of {laid.Copies}");

    /// <summary>What one garment needs: "cut 1 pair"; a half that was opened for open cloth says so.</summary>
    public static string Cut(Piece piece) => piece is { Cut.Kind: CutKind.OnFold, FoldEdge: null }
        ? string.Create(CultureInfo.InvariantCulture, $"cut {piece.Cut.Count}, opened out")
        : "cut " + piece.Cut;

    /// <summary>How it is cut here: "on fold", "2 layers", "1 layer".</summary>
    public static string Layers(Placement placement) => placement switch
    {
        { Contact: FoldContact.OnFold } => "on fold",
        { Layers: 1 } => "1 layer",
        _ => string.Create(CultureInfo.InvariantCulture, $"{placement.Layers} layers"),
    };

    /// <summary>Which side lies up.</summary>
    public static string SideUp(Placement placement) =>
        placement.Turn.Facing == Facing.Flipped ? WrongSideUp : "right side up";

    /// <summary>Words joined by a dot, empty ones left out.</summary>
    public static string Joined(params ReadOnlySpan<string> words)
    {
        List<string> kept = [];
        foreach (string word in words)
        {
            if (word.Length > 0)
                kept.Add(word);
        }
        return string.Join(" · ", kept);
    }
}
