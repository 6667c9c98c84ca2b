using Nestmark.Cloths;
using Nestmark.Geometry;

namespace Nestmark.Yardage.Charts;

/// <summary>One cell of a chart: one garment of a size, from a cloth of a width.</summary>
/// <param name="Cloth">Name of the cloth, which gives everything but width and nap.</param>
/// <param name="Size">The size; empty for a job without sizes.</param>
/// <param name="Nap">The direction rule in place of the cloth's own.</param>
/// <param name="Width">The full width in place of the cloth's own.</param>
public sealed record ChartCell(string Cloth, string Size, Nap Nap, Length Width)
{
    /// <summary>The job that lays this cell: one garment on one cloth.</summary>
    /// <param name="job">The whole job.</param>
    public Job JobOf(Job job) => job with
    {
        Cloths = [ClothOf(job)],
        Pieces = [.. job.Pieces.Where(piece => piece.Cloth == Cloth && (piece.Piece.Size.Length == 0 || piece.Piece.Size == Size))],
        Sizes = [new SizeCount(Size, 1)],
    };

    /// <summary>The cloth of this cell.</summary>
    /// <param name="job">The whole job.</param>
    public Cloth ClothOf(Job job) => job.Cloths.First(cloth => cloth.Name == Cloth) with { Width = Width, Nap = Nap };
}
