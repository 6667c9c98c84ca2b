namespace Nestmark.Nesting.NoFit;

/// <summary>A box that holds a no-fit polygon as the search sees it, known before the polygon itself.</summary>
internal readonly record struct FitRoom(double MinX, double MaxX, double MinY, double MaxY);
