using Nestmark.Geometry;

namespace Nestmark.Pieces.Alterations;

/// <summary>A place on a piece by its name.</summary>
public sealed record AlterPlace
{
    private AlterPlace(string name, string edge) => (Name, Edge) = (name, edge);

    /// <summary>A corner's letter, or the text of a mark or notch; empty for a place on an edge.</summary>
    public string Name { get; }

    /// <summary>The edge, as "A-B"; empty for a named place.</summary>
    public string Edge { get; }

    /// <summary>Distance along the edge from the first of its letters; <c>null</c> for a share.</summary>
    public Length? Along { get; private init; }

    /// <summary>Share of the edge's length from the first of its letters, 0 to 1; where there is no distance.</summary>
    public double ShareRatio { get; private init; }

    /// <summary>The corner, mark or notch of this name; a corner goes first.</summary>
    public static AlterPlace Named(string name) => new(name, "");

    /// <summary>A distance along an edge from the first of its letters.</summary>
    public static AlterPlace OnEdge(string edge, Length along) => new("", edge) { Along = along };

    /// <summary>A share of an edge from the first of its letters.</summary>
    public static AlterPlace AtShare(string edge, double shareRatio) => new("", edge) { ShareRatio = shareRatio };

    /// <summary>As the job file writes it.</summary>
    public override string ToString() => Edge.Length == 0 ? Name
        : Along is { } along ? $"{along} on {Edge}"
        : ShareRatio == 0.5 ? $"middle of {Edge}"
        : Edge;
}
