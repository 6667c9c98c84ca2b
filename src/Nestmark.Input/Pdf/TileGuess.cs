namespace Nestmark.Input.Pdf;

/// <summary>How pages may be trimmed and laid.</summary>
/// <param name="Window">What is left of a page after trimming.</param>
/// <param name="OverlapXMillimeters">How far neighbors in a row lie on each other.</param>
/// <param name="OverlapYMillimeters">How far neighbors in a column do.</param>
internal sealed record TileGuess(TileCutting Window, double OverlapXMillimeters, double OverlapYMillimeters)
{
    /// <summary>What is left of a page when half of each overlap is taken from either neighbor.</summary>
    public TileCutting Own => new(
        Window.LeftMillimeters + OverlapXMillimeters / 2, Window.BottomMillimeters + OverlapYMillimeters / 2,
        Window.RightMillimeters - OverlapXMillimeters / 2, Window.TopMillimeters - OverlapYMillimeters / 2);
}
