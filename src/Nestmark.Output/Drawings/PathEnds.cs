namespace Nestmark.Output.Drawings;

/// <summary>Whether a run of places returns to its start.</summary>
internal enum PathEnds
{
    Open,
    Closed,
}
