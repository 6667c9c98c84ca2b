using Nestmark.Input.Yaml;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>The problems found so far, in the order found.</summary>
internal sealed class ProblemList
{
    private const int Longest = 200;
    private readonly List<Problem> _problems = [];

    /// <summary>All problems, those of one file by line; no problem twice.</summary>
    public IReadOnlyList<Problem> All => _problems;

    /// <summary>Whether planning is out of the question.</summary>
    public bool HasErrors => _problems.Exists(problem => problem.Severity == Severity.Error);

    public void Add(Severity severity, Place where, Fault fault)
    {
        Problem problem = new(severity, where, fault.What, fault.Hint);
        if (_problems.Count < Longest && !_problems.Contains(problem))
            _problems.Add(problem);
    }

    public void Error(string file, JobNode node, string item, Fault fault) =>
        Add(Severity.Error, new Place(file, node.Line, node.Column, item), fault);
}
