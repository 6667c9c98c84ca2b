using System.Runtime.CompilerServices;
using Nestmark.Nesting.NoFit;

namespace Nestmark.Nesting.Search;

/// <summary>How severely a moving shape overlaps a still one, as the moving one sees it.</summary>
/// <remarks>
/// One <see cref="OverlapMap"/> serves both orders of a pair and all its mirror images; each sees it mirrored in its own way.
/// Half a cache line long, since looking it up costs more than what is done with it.
/// </remarks>
internal struct PairSide
{
    private const float Last = OverlapMap.Cells - 0.001f;

    private readonly float _cellsPerX;
    private readonly float _cellsPerY;
    private readonly float _originColumn;
    private readonly float _originRow;
    private readonly float _scale;
    private readonly sbyte _signX;
    private readonly sbyte _signY;
    private OverlapMap? _map;

    /// <param name="map">Of the two shapes.</param>
    /// <param name="seen">How it is seen.</param>
    /// <param name="scale">Factor on what it says.</param>
    public PairSide(OverlapMap map, Mirroring seen, double scale)
    {
        _map = map;
        double perX = OverlapMap.Cells / (map.Fit.MaxX - map.Fit.MinX);
        double perY = OverlapMap.Cells / (map.Fit.MaxY - map.Fit.MinY);
        (_cellsPerX, _cellsPerY) = ((float)(seen.SignX * perX), (float)(seen.SignY * perY));
        (_originColumn, _originRow) = ((float)(-map.Fit.MinX * perX), (float)(-map.Fit.MinY * perY));
        _scale = (float)(scale * map.UnitMicrometers);
        (_signX, _signY) = ((sbyte)seen.SignX, (sbyte)seen.SignY);
    }

    /// <summary>Whether a slot of a table is filled; what it holds may be read then.</summary>
    public static bool IsFilled(ref PairSide slot) => Volatile.Read(ref slot._map) is not null;

    /// <summary>Fills an empty slot of a table that other threads may be reading; one thread at a time.</summary>
    public static void Fill(ref PairSide slot, PairSide side)
    {
        OverlapMap? map = side._map;
        side._map = null;
        slot = side;
        Volatile.Write(ref slot._map, map);
    }

    /// <summary>Severity at a place, above 0 where the shapes overlap; 0 elsewhere.</summary>
    /// <param name="x">Of the moving shape, seen from the still one, in micrometers.</param>
    /// <param name="y">As <paramref name="x"/>.</param>
    public readonly float At(double x, double y)
    {
        float column = (float)x * _cellsPerX + _originColumn;
        float row = (float)y * _cellsPerY + _originRow;
        if (!(column >= 0 && row >= 0 && column < OverlapMap.Cells && row < OverlapMap.Cells))
            return 0;
        CellKind kind = _map!.KindAt(column, row);
        return kind == CellKind.Outside || (kind == CellKind.Crossed && !_map.Fit.Contains(_signX * x, _signY * y)) ? 0 : _scale * _map.SeverityAt(column, row);
    }

    /// <summary>Severity at a place known to lie inside the no-fit polygon.</summary>
    /// <param name="x">As for <see cref="At"/>.</param>
    /// <param name="y">As <paramref name="x"/>.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly float Inside(double x, double y) => _scale * _map!.SeverityAt(
        Math.Clamp((float)x * _cellsPerX + _originColumn, 0, Last), Math.Clamp((float)y * _cellsPerY + _originRow, 0, Last));
}
