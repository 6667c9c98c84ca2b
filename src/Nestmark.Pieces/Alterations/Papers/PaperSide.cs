namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Which part of a cut piece a place belongs to.</summary>
internal enum PaperSide
{
    /// <summary>The part that stays.</summary>
    Still,

    /// <summary>The strip or wedge that is taken out.</summary>
    Gap,

    /// <summary>The part that is moved.</summary>
    Moving,
}
