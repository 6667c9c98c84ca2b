namespace Nestmark.Pieces.Drafting;

/// <summary>How a panel lies to the grain.</summary>
internal enum CirclePanelLay
{
    MiddleAlongGrain,
    EdgeAlongGrain,
    HalfOnFold,
}
