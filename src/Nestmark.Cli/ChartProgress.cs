using System.Globalization;
using Nestmark.Cloths;
using Nestmark.Yardage;
using Nestmark.Yardage.Charts;

namespace Nestmark.Cli;

/// <summary>Tells each cell of a chart as it is found: one line a cell, written over on a screen.</summary>
internal sealed class ChartProgress(Terminal terminal, MeasureSystem system) : IDisposable
{
    private int _printed;

    /// <summary>A cell has been found; one call at a time.</summary>
    public void Report(ChartNews news)
    {
        string text = string.Create(CultureInfo.InvariantCulture, $"{news.Done} of {news.All}: {Words(news)}");
        if (terminal.Kind == TerminalKind.Interactive)
            terminal.Out.Write("\r" + text.PadRight(_printed));
        else
            terminal.Out.WriteLine(text);
        terminal.Out.Flush();
        _printed = text.Length;
    }

    /// <summary>Leaves the cursor at the start of a line.</summary>
    public void Dispose()
    {
        if (terminal.Kind == TerminalKind.Interactive && _printed > 0)
            terminal.Out.WriteLine();
    }

    private string Words(ChartNews news)
    {
        ChartCell cell = news.Cell;
        string nap = cell.Nap == Nap.None ? "without nap" : "with nap";
        string found = news.Finding.Unplaced.IsEmpty ? $"lay {LengthWords.Tape(news.Finding.LayLength, system)} long" : "cannot be cut";
        return string.Join(", ", new[] { cell.Cloth, cell.Size, LengthWords.Tape(cell.Width, system) + " wide", nap }.Where(word => word.Length > 0)) + ": " + found;
    }
}
