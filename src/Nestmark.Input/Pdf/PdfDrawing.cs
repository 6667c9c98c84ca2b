using System.Collections.Immutable;
using System.Globalization;
using Nestmark.Geometry.Curves;
using Nestmark.Input.Outlines;
using Nestmark.Input.Svg;
using Nestmark.Yardage;

namespace Nestmark.Input.Pdf;

/// <summary>A PDF pattern: its sheets, and the outlines that each size finds on them.</summary>
internal sealed class PdfDrawing : IDrawing
{
    private const int MostKindsTold = 12;

    private readonly DrawingSettings _settings;
    private readonly string _path;
    private readonly ProblemList _problems;
    private readonly ImmutableArray<PdfSheet> _sheets;
    private readonly Dictionary<string, ImmutableArray<PdfOutline>?> _bySize = new(StringComparer.Ordinal);

    private PdfDrawing(ImmutableArray<PdfSheet> sheets, string path, ProblemList problems, DrawingSettings settings)
    {
        _settings = settings;
        _path = path;
        _problems = problems;
        AffineMap scale = AffineMap.Scale(settings.ScaleRatio ?? 1, settings.ScaleRatio ?? 1);
        _sheets = [.. sheets.Select(sheet => Scaled(sheet, scale))];
    }

    /// <inheritdoc/>
    public IReadOnlyList<string> Names
    {
        get
        {
            ImmutableArray<PdfOutline> outlines = Outlines("") ?? [];
            return [.. outlines.Select(outline => outlines.Count(other => other.IsCalled(outline.Name)) == 1 ? outline.Name : outline.NumberName)];
        }
    }

    private string Kinds => string.Join("; ", _sheets.SelectMany(sheet => sheet.Strokes).GroupBy(stroke => stroke.Kind)
        .OrderByDescending(group => group.Count()).ThenBy(group => group.Key, StringComparer.Ordinal).Take(MostKindsTold)
        .Select(group => string.Create(CultureInfo.InvariantCulture, $"{group.Key} ({group.Count()})")));

    /// <summary>The drawing; <c>null</c> after an error that spoils all of it.</summary>
    public static PdfDrawing? Load(ReadOnlyMemory<byte> bytes, string path, ProblemList problems, DrawingSettings settings)
    {
        void Error(Fault fault) => problems.Add(Severity.Error, new Place(path, 0, 0, ""), fault);
        if (settings.UnitsPerInchRatio is not null)
            settings.Error("scale", ScaleFaults.DpiWithTrueSize());
        if (PdfLoading.Load(bytes, settings, Error) is not ImmutableArray<PdfSheet> sheets)
            return null;
        PdfDrawing unjoined = new(sheets, path, problems, settings);
        if (!unjoined.CheckScale())
            return null;
        if (settings.Tiles is not PdfTiles tiles)
            return new PdfDrawing(TileFinding.Joined(sheets, fault => problems.Add(Severity.Note, new Place(path, 0, 0, ""), fault)), path, problems, settings).Told();
        // Trimming is measured on the paper, so pages are joined before they are scaled.
        return PdfJoining.Join(sheets, tiles, fault => settings.Error("tiles", fault), fault => settings.Note("tiles", fault)) is PdfSheet joined
            ? new PdfDrawing([joined], path, problems, settings).Told()
            : null;
    }

    /// <summary>The sizes that select names; none where lines are not chosen by size.</summary>
    public IReadOnlyList<string> SizesOf(string name)
    {
        if (!_settings.Select.IsBySize)
            return [];
        PdfWanted?[] wanted = [_settings.Select.Layer, _settings.Select.Color, _settings.Select.Dash];
        string[] named = [.. wanted.SelectMany(one => one is null ? [] : one.BySize.Select(pair => pair.Size)).Distinct()];
        return named.Length > 0 ? named : [.. _sheets.SelectMany(sheet => sheet.Strokes).SelectMany(stroke => stroke.Layers).Distinct()];
    }

    /// <inheritdoc/>
    public Fault? FaultOf(PieceWish wish)
    {
        if (Outlines(wish.Size) is not ImmutableArray<PdfOutline> outlines)
            return PdfFaults.NothingSelected(wish.Size, Kinds);
        PdfOutline[] called = [.. outlines.Where(outline => outline.IsCalled(wish.Name))];
        return called.Length switch
        {
            1 => null,
            0 => PdfFaults.NoSuchPiece(wish.Name, [.. outlines.Select(outline => outline.Name)]),
            _ => PdfFaults.SeveralPieces(wish.Name, called.Select(outline => $"{outline.NumberName} at {PdfPieceMaking.PlaceText(outline.Sheet, outline.Points[0])}")),
        };
    }

    /// <inheritdoc/>
    public DrawnPiece? Piece(PieceWish wish)
    {
        PdfOutline outline = Outlines(wish.Size)!.Value.First(outline => outline.IsCalled(wish.Name));
        return PdfPieceMaking.Make(outline, (severity, fault) => _problems.Add(severity, new Place(_path, 0, 0, "#" + wish.Name), fault));
    }

    private ImmutableArray<PdfOutline>? Outlines(string size)
    {
        if (_bySize.TryGetValue(size, out ImmutableArray<PdfOutline>? known))
            return known;
        List<PdfOutline> outlines = [];
        List<string> leftOut = [];
        bool isAny = false;
        foreach (PdfSheet sheet in _sheets)
        {
            SubPath[] runs = [.. sheet.Strokes.Where(stroke => _settings.Select.Takes(stroke, size)).Select(stroke => stroke.Run)];
            isAny |= runs.Length > 0;
            if (runs.Length > PdfLimits.MostRuns || runs.Count(run => run.Form == SubPathForm.Open) > PdfLimits.MostOpenRuns)
                leftOut.Add($"{sheet.Name}: " + PdfFaults.TooManyRuns(runs.Length, Kinds).What);
            else
                outlines.AddRange(PdfOutlines.Of(sheet, runs, outlines.Count + 1, _settings.TestSquareSide?.TotalMillimeters, fault => _problems.Add(Severity.Note, new Place(_path, 0, 0, size), fault), leftOut));
        }
        if (leftOut.Count > 0)
            _problems.Add(Severity.Note, new Place(_path, 0, 0, size), PdfFaults.LeftOut(string.Join("; ", leftOut)));
        ImmutableArray<PdfOutline>? found = isAny ? [.. outlines] : null;
        _bySize.Add(size, found);
        return found;
    }

    /// <summary>Whether the test square, if one is asked for, is as large as it should be.</summary>
    private bool CheckScale()
    {
        if (_settings.TestSquareSide is not Geometry.Length side)
        {
            _settings.Note("", ScaleFaults.Unchecked(_settings.File));
            return true;
        }
        double wanted = side.TotalMillimeters;
        double[] squares =
        [
            .. _sheets.SelectMany(sheet => sheet.Strokes).Select(stroke => DrawnBox.Rectangle(stroke.Run)).OfType<(double First, double Second)>()
                .Where(box => SquareCheck.IsSquare(box.First, box.Second)).Select(box => (box.First + box.Second) / 2)
                .Where(measured => measured > wanted / 2 && measured < wanted * 2)
                .OrderBy(measured => Math.Abs(measured / wanted - 1)),
        ];
        Fault fault = squares.Length == 0 ? ScaleFaults.NoSquare("no closed square between half and twice its size")
            : SquareCheck.FaultOf(squares[0], squares[0], side, _settings.ScaleRatio ?? 1) ?? ScaleFaults.ScaleConfirmed(squares[0]);
        bool isRight = squares.Length > 0 && SquareCheck.FaultOf(squares[0], squares[0], side, 1) is null;
        if (isRight)
            _settings.Note("test_square", fault);
        else
            _settings.Error("test_square", fault);
        return isRight;
    }

    /// <summary>This drawing, after telling what kinds of lines it has and what was not understood.</summary>
    private PdfDrawing Told()
    {
        string kinds = Kinds;
        if (_settings.Select == PdfSelection.Everything && kinds.Contains("; ", StringComparison.Ordinal))
            _problems.Add(Severity.Note, new Place(_path, 0, 0, ""), PdfFaults.Kinds(kinds));
        string[] leftOut = [.. _sheets.SelectMany(sheet => sheet.LeftOut)];
        if (leftOut.Length > 0)
            _problems.Add(Severity.Note, new Place(_path, 0, 0, ""), PdfFaults.LeftOut(string.Join("; ", leftOut)));
        return this;
    }

    private static PdfSheet Scaled(PdfSheet sheet, AffineMap scale) => scale == AffineMap.Identity ? sheet : sheet with
    {
        WidthMillimeters = sheet.WidthMillimeters * scale.XxRatio,
        HeightMillimeters = sheet.HeightMillimeters * scale.XxRatio,
        Strokes = [.. sheet.Strokes.Select(stroke => stroke with { Run = stroke.Run.Mapped(scale) })],
        Words = [.. sheet.Words.Select(words => words with { Middle = scale.Apply(words.Middle) })],
    };
}
