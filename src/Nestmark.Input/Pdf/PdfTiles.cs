using System.Collections.Immutable;
using Nestmark.Geometry;

namespace Nestmark.Input.Pdf;

/// <summary>How printed pages are joined to one sheet.</summary>
/// <param name="Pages">Page numbers in rows, the top row first; 0 where a page was left out. One page or more.</param>
/// <param name="Trim">What is cut off each edge of a page before joining.</param>
/// <param name="Overlap">By how much neighbors lie on each other after trimming.</param>
internal sealed record PdfTiles(ImmutableArray<ImmutableArray<int>> Pages, Length Trim, Length Overlap)
{
    /// <summary>The page numbers row by row, without the places left out.</summary>
    public IEnumerable<int> InOrder => Pages.SelectMany(row => row).Where(page => page > 0);
}
