using Nestmark.Yardage;

namespace Nestmark.Input.Dxf;

/// <summary>Reports problems of one file with the line they are about.</summary>
internal sealed class DxfProblems(string file, ProblemList problems)
{
    /// <summary>Adds a problem; line 0 means the whole file.</summary>
    public void Add(Severity severity, int line, string item, Fault fault) => problems.Add(severity, new Place(file, line, line == 0 ? 0 : 1, item), fault);

    public void Error(int line, string item, Fault fault) => Add(Severity.Error, line, item, fault);

    public void Note(int line, string item, Fault fault) => Add(Severity.Note, line, item, fault);
}
