using System.Collections.Immutable;
using Nestmark.Cloths;
using Nestmark.Nesting;

namespace Nestmark.Yardage;

/// <summary>What a job cuts from one of its cloths.</summary>
/// <param name="Cloth">The cloth.</param>
/// <param name="Orders">Its pieces, in the order of the job; a piece that serves every size stands once for each.</param>
/// <param name="Options">The ways to spread the cloth, one or more.</param>
internal sealed record ClothWork(Cloth Cloth, ImmutableArray<PieceOrder> Orders, ImmutableArray<LayOption> Options)
{
    /// <summary>Area of cloth that the placements cut, all layers together.</summary>
    public double AreaSquareMillimeters { get; } =
        Options[0].Demands.Sum(demand => demand.Layers * demand.Piece.CuttingLine.AreaSquareMillimeters);

    /// <summary>Whether the print ties any piece.</summary>
    public bool IsMatched => Orders.Any(order => order.Hold is not null);

    /// <summary>The work on one cloth of a job.</summary>
    public static ClothWork Of(Job job, Cloth cloth, LayWording wording)
    {
        ImmutableArray<PieceOrder> orders = PrintHolding.Held(cloth, OrdersOf(job, cloth), job.Matches);
        return new ClothWork(cloth, orders, LayChoices.For(cloth, orders, wording));
    }

    /// <summary>What a job cuts from a cloth.</summary>
    public static ImmutableArray<PieceOrder> OrdersOf(Job job, Cloth cloth) =>
        [.. job.Pieces.Where(piece => piece.Cloth == cloth.Name).SelectMany(piece => OrdersFor(job, piece))];

    private static IEnumerable<PieceOrder> OrdersFor(Job job, JobPiece piece) => job.Sizes
        .Where(size => piece.Piece.Size.Length == 0 || piece.Piece.Size == size.Size)
        .Select(size => new PieceOrder(piece.Piece, size.Size, size.Garments));
}
