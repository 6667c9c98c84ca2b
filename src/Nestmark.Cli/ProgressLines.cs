using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Yardage;

namespace Nestmark.Cli;

/// <summary>Tells how a search stands: one line written over on a screen, otherwise a line a second at most, and only when the lay got shorter.</summary>
internal sealed class ProgressLines : IDisposable
{
    private static readonly TimeSpan ScreenPeriod = TimeSpan.FromMilliseconds(200);
    private static readonly TimeSpan PlainPeriod = TimeSpan.FromSeconds(1);

    private readonly Lock _lock = new();
    private readonly Terminal _terminal;
    private readonly MeasureSystem _system;
    private readonly Timer _timer;
    private string _cloth = "";
    private Length _best;
    private string _printed = "";

    /// <summary>Begins with nothing to tell.</summary>
    public ProgressLines(Terminal terminal, MeasureSystem system)
        : this(terminal, system, terminal.Kind == TerminalKind.Interactive ? ScreenPeriod : PlainPeriod)
    {
    }

    /// <summary>The same with another period between two lines; an infinite one leaves them out.</summary>
    internal ProgressLines(Terminal terminal, MeasureSystem system, TimeSpan period)
    {
        _terminal = terminal;
        _system = system;
        _timer = new Timer(_ => Print(), null, period, period);
    }

    /// <summary>News of a cloth's search; from any thread. The first news of a cloth is printed at once.</summary>
    public void Report(string cloth, SearchProgress progress)
    {
        lock (_lock)
        {
            bool first = cloth != _cloth;
            if (first)
                Print();
            _cloth = cloth;
            _best = progress.BestLayLength;
            if (first)
                Print();
        }
    }

    /// <summary>Prints what is still untold and leaves the cursor at the start of a line.</summary>
    public void Dispose()
    {
        _timer.Dispose();
        lock (_lock)
        {
            Print();
            if (_terminal.Kind == TerminalKind.Interactive && _printed.Length > 0)
                _terminal.Out.WriteLine();
        }
    }

    private void Print()
    {
        lock (_lock)
        {
            if (_cloth.Length == 0)
                return;
            string text = $"{_cloth}: lay {LengthWords.Tape(_best, _system)} long so far";
            if (text == _printed)
                return;
            if (_terminal.Kind == TerminalKind.Interactive)
                _terminal.Out.Write("\r" + text.PadRight(_printed.Length));
            else
                _terminal.Out.WriteLine(text);
            _terminal.Out.Flush();
            _printed = text;
        }
    }
}
