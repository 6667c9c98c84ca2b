namespace Nestmark.Nesting.NoFit;

/// <summary>Where a cell of a grid lies.</summary>
internal enum CellKind : byte
{
    /// <summary>Outside the no-fit polygon.</summary>
    Outside,

    /// <summary>Inside it.</summary>
    Inside,

    /// <summary>An edge passes it, or may.</summary>
    Crossed,
}
