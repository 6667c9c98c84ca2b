namespace Nestmark.Output.Drawings;

/// <summary>What a figure stands for; the class name in SVG.</summary>
internal enum Role
{
    CuttingLine,
    SeamLine,
    FoldEdge,
    CenterLine,
    Grainline,
    Notch,
    InternalLine,
    Mark,
    Label,
    ClothEdge,
    Selvage,
    Fold,
    Flaw,
    Print,
    WrongSide,
    Ruler,
    Frame,
    Join,
    TestSquare,
}
