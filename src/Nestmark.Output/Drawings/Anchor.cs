namespace Nestmark.Output.Drawings;

/// <summary>Which point of the base line of a text lies at its place.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}
