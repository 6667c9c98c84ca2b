namespace Nestmark.Output.Drawings;

/// <summary>One thing on a picture.</summary>
internal abstract record Figure
{
    /// <summary>The smallest area that holds it, line width left out.</summary>
    public abstract Area Bounds { get; }
}
