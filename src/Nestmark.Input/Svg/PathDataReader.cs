using System.Collections.Immutable;
using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Svg;

/// <summary>Reads path data: M L H V C S Q T A Z, absolute and relative, with compact numbers and arc flags.</summary>
/// <remarks>SVG 2, chapter Paths; references/formats.md 3.2. A viewer draws a broken path up to the break; here the whole path is refused.</remarks>
internal sealed class PathDataReader
{
    private readonly SvgScanner _scanner;
    private readonly List<SubPath> _done = [];
    private readonly List<CurveSegment> _open = [];
    private CurvePoint _here;
    private CurvePoint _subPathStart;
    private CurvePoint? _lastCubicControl;
    private CurvePoint? _lastQuadraticControl;
    private Fault? _fault;

    private PathDataReader(string data) => _scanner = new SvgScanner(data);

    /// <summary>The runs of segments in the drawing's own units; runs without a segment are left out.</summary>
    public static Reading<ImmutableArray<SubPath>> Read(string data)
    {
        PathDataReader reader = new(data);
        reader.ReadAll();
        return reader._fault is null ? new([.. reader._done], null) : new(default, reader._fault);
    }

    private void ReadAll()
    {
        _scanner.SkipBlanks();
        if (!_scanner.IsAtEnd && _scanner.Peek is not ('M' or 'm'))
            Fail("expected M at the start");
        while (_fault is null && !_scanner.IsAtEnd)
        {
            char command = _scanner.Peek;
            if (!"MmLlHhVvCcSsQqTtAaZz".Contains(command, StringComparison.Ordinal))
            {
                Fail("expected one of the letters M L H V C S Q T A Z");
                return;
            }
            _scanner.Advance();
            Run(command);
        }
        Finish(SubPathForm.Open);
    }

    /// <summary>One letter with all its arguments.</summary>
    private void Run(char command)
    {
        _scanner.SkipBlanks();
        if (command is 'Z' or 'z')
        {
            Close();
            return;
        }
        do
        {
            bool isCubic = command is 'C' or 'c' or 'S' or 's';
            bool isQuadratic = command is 'Q' or 'q' or 'T' or 't';
            Draw(command);
            _lastCubicControl = isCubic ? _lastCubicControl : null;
            _lastQuadraticControl = isQuadratic ? _lastQuadraticControl : null;
            command = command switch { 'M' => 'L', 'm' => 'l', _ => command };
            _scanner.SkipSeparator();
        }
        while (_fault is null && _scanner.IsAtNumber);
    }

    private void Draw(char command)
    {
        CurvePoint origin = char.IsAsciiLetterLower(command) ? _here : default;
        switch (char.ToUpperInvariant(command))
        {
            case 'M':
                MoveTo(PointFrom(origin));
                break;
            case 'L':
                LineTo(PointFrom(origin));
                break;
            case 'H':
                LineTo(new CurvePoint(origin.XMillimeters + Number(), _here.YMillimeters));
                break;
            case 'V':
                LineTo(new CurvePoint(_here.XMillimeters, origin.YMillimeters + Number()));
                break;
            case 'C':
                CubicTo(PointFrom(origin), PointFrom(origin), PointFrom(origin));
                break;
            case 'S':
                CubicTo(_lastCubicControl is CurvePoint cubic ? _here * 2 - cubic : _here, PointFrom(origin), PointFrom(origin));
                break;
            case 'Q':
                QuadraticTo(PointFrom(origin), PointFrom(origin));
                break;
            case 'T':
                QuadraticTo(_lastQuadraticControl is CurvePoint quadratic ? _here * 2 - quadratic : _here, PointFrom(origin));
                break;
            default:
                ArcTo(origin);
                break;
        }
    }

    private void MoveTo(CurvePoint point)
    {
        Finish(SubPathForm.Open);
        _here = point;
        _subPathStart = point;
    }

    private void Close()
    {
        if (_here != _subPathStart)
            _open.Add(new StraightSegment(_here, _subPathStart));
        _here = _subPathStart;
        Finish(SubPathForm.Closed);
        (_lastCubicControl, _lastQuadraticControl) = (null, null);
    }

    private void Finish(SubPathForm form)
    {
        if (_open.Count > 0 && _fault is null)
            _done.Add(new SubPath([.. _open], form));
        _open.Clear();
    }

    private void LineTo(CurvePoint end)
    {
        if (end != _here)
            Add(new StraightSegment(_here, end));
    }

    private void CubicTo(CurvePoint startControl, CurvePoint endControl, CurvePoint end)
    {
        _lastCubicControl = endControl;
        Add(new CubicSegment(_here, startControl, endControl, end));
    }

    private void QuadraticTo(CurvePoint control, CurvePoint end)
    {
        _lastQuadraticControl = control;
        Add(CubicSegment.FromQuadratic(_here, control, end));
    }

    private void ArcTo(CurvePoint origin)
    {
        EndpointArc arc = new()
        {
            Start = _here,
            RadiusXMillimeters = Number(),
            RadiusYMillimeters = Number(),
            RotationDegrees = Number(),
            Size = Flag() ? ArcSize.Large : ArcSize.Small,
            Sense = Flag() ? ArcSense.Rising : ArcSense.Falling,
            End = PointFrom(origin),
        };
        if (_fault is null && arc.End != _here)
            Add(arc.ToSegment());
    }

    private void Add(CurveSegment segment)
    {
        if (_fault is not null)
            return;
        _open.Add(segment);
        _here = segment.End;
    }

    private CurvePoint PointFrom(CurvePoint origin)
    {
        double x = Number();
        return new CurvePoint(origin.XMillimeters + x, origin.YMillimeters + Number());
    }

    private double Number()
    {
        if (_fault is not null)
            return 0;
        _scanner.SkipSeparator();
        if (_scanner.Number() is not double number)
            Fail("expected a number");
        else if (!(Math.Abs(number) <= SvgLimits.LargestNumber))
            Fail("found a number that is too large");
        else
            return number;
        return 0;
    }

    private bool Flag()
    {
        if (_fault is not null)
            return false;
        _scanner.SkipSeparator();
        if (_scanner.Flag() is bool flag)
            return flag;
        Fail("expected an arc flag, 0 or 1");
        return false;
    }

    private void Fail(string expected) => _fault ??= SvgFaults.PathData(_scanner.Position + 1, expected);
}
