using System.Collections.Immutable;

namespace Nestmark.Nesting;

/// <summary>How the print of the cloth holds a piece: which places of the repeat it may take. Compared by reference.</summary>
public sealed class PrintHold
{
    /// <summary>Along the cloth; <c>null</c> when it is free there.</summary>
    public AxisHold? Along { get; init; }

    /// <summary>Across the cloth; <c>null</c> when it is free there, or lies on the border.</summary>
    public AxisHold? Across { get; init; }

    /// <summary>The coordinate of the piece that lies where the border begins; <c>null</c> when it is not tied to it.</summary>
    public long? OnBorderMicrometers { get; init; }

    /// <summary>Why its rules cannot all be kept, a sentence that goes on after its name; <c>null</c> when they can.</summary>
    public string? Conflict { get; init; }

    /// <summary>Whether the grainline lies across the cloth, so that the piece's x runs across it.</summary>
    public bool IsAcross { get; init; }

    /// <summary>The rules that it takes part in.</summary>
    public required ImmutableArray<PrintTie> Ties { get; init; }

    /// <summary>How the print holds it in a direction.</summary>
    public AxisHold? In(ClothAxis axis) => axis == ClothAxis.Along ? Along : Across;
}
