using Nestmark.Input.Outlines;

namespace Nestmark.Input.Dxf;

/// <summary>A loaded DXF file; gives pieces by name and size.</summary>
internal sealed class DxfDrawing : IDrawing
{
    private readonly DxfProblems _problems;
    private readonly List<DxfPiece> _pieces;

    private DxfDrawing(List<DxfPiece> pieces, string dialect, DxfProblems problems)
    {
        (_pieces, Dialect, _problems) = (pieces, dialect, problems);
        Names = [.. pieces.Select(piece => piece.Name).Distinct()];
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The standard that the file names; empty without one.</summary>
    public string Dialect { get; }

    /// <summary>The drawing, or <c>null</c> after a problem that spoils all of it.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="problems">Where problems go.</param>
    /// <param name="settings">What the job says about the drawing.</param>
    public static DxfDrawing? Load(ReadOnlyMemory<byte> bytes, DxfProblems problems, DrawingSettings settings)
    {
        if (FormFault(bytes.Span) is Fault fault)
        {
            problems.Error(1, "", fault);
            return null;
        }
        bool hasMark = bytes.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF]);
        if (new DxfContentReader(problems).Read(hasMark ? bytes[3..] : bytes) is not DxfContent content)
            return null;
        if (settings.UnitsPerInchRatio is not null)
            settings.Error("scale", ScaleFaults.DpiOfDxf());
        if (DxfUnits.MillimetersIn(content, DxfPatternPieces.StyleField(content, "UNITS"), problems, settings) is not double drawn)
            return null;
        double unit = drawn * (settings.ScaleRatio ?? 1);
        List<DxfPiece> pieces = DxfPatternPieces.IsPattern(content)
            ? new DxfPatternPieces(content, problems).Read(unit)
            : new DxfPlainPieces(content, problems).Read(unit);
        if (pieces.Count == 0)
            problems.Error(0, "", DxfFaults.NoPieces());
        if (content.GradeMarks > 0 || DxfPatternPieces.StyleField(content, "GRADE RULE TABLE").Length > 0)
            problems.Note(0, "", DxfFaults.NotGraded(content.GradeMarks, DxfPatternPieces.StyleField(content, "GRADE RULE TABLE")));
        if (!content.LeftOut.IsEmpty)
            problems.Note(0, "", DxfFaults.LeftOut(content.LeftOut.List()));
        return pieces.Count == 0 ? null : new DxfDrawing(pieces, DxfPatternPieces.DialectOf(content), problems);
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> SizesOf(string name) =>
        [.. _pieces.Where(piece => piece.Name == name && piece.Size.Length > 0).Select(piece => piece.Size).Distinct()];

    /// <inheritdoc/>
    public Fault? FaultOf(PieceWish wish)
    {
        List<DxfPiece> found = Found(wish);
        if (found.Count == 1)
            return null;
        IReadOnlyList<string> sizes = SizesOf(wish.Name);
        if (found.Count == 0)
            return sizes.Count > 0 ? DxfFaults.MissingSize(wish.Name, wish.Size, sizes) : DxfFaults.MissingName(wish.Name, Names);
        return wish.Size.Length == 0 && sizes.Count > 1
            ? DxfFaults.SeveralSizes(wish.Name, sizes)
            : DxfFaults.DoublePiece(wish.Size.Length == 0 ? wish.Name : wish.Name + " " + wish.Size, found[0].Line, found[1].Line);
    }

    /// <inheritdoc/>
    public DrawnPiece? Piece(PieceWish wish) => new DxfPieceMaking(Found(wish)[0], wish, _problems).Make();

    /// <summary>Pieces of that name, in the wished size; else the block of that name, or the piece whose name and size make it up, as "FRONT-M".</summary>
    private List<DxfPiece> Found(PieceWish wish)
    {
        List<DxfPiece> named = _pieces.FindAll(piece => piece.Name == wish.Name);
        if (named.Count > 0)
            return named.FindAll(piece => wish.Size.Length == 0 || piece.Size == wish.Size || piece.Size.Length == 0);
        List<DxfPiece> sized = _pieces.FindAll(piece => piece.Size.Length > 0 && piece.Name + "-" + piece.Size == wish.Name);
        return sized.Count > 0 ? sized : _pieces.FindAll(piece => piece.Block == wish.Name);
    }

    private static Fault? FormFault(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("AutoCAD Binary DXF"u8))
            return DxfFaults.Binary();
        bool isWide = bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]);
        return isWide ? DxfFaults.WideText() : null;
    }
}
