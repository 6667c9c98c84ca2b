namespace Nestmark.Output.Drawings;

/// <summary>How a label lies.</summary>
internal enum LabelTurn
{
    Upright,
    Quarter,
}
