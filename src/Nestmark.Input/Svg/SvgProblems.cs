using System.Xml;
using System.Xml.Linq;
using Nestmark.Yardage;

namespace Nestmark.Input.Svg;

/// <summary>Reports problems of one drawing with the line of the element they are about.</summary>
internal sealed class SvgProblems(string file, ProblemList problems)
{
    /// <summary>Adds an error about an element.</summary>
    public void Error(XObject? about, string item, Fault fault) => Add(Severity.Error, about, item, fault);

    /// <summary>Adds a problem about an element or attribute; <c>null</c> means the whole file.</summary>
    public void Add(Severity severity, XObject? about, string item, Fault fault)
    {
        bool isKnown = about is not null && ((IXmlLineInfo)about).HasLineInfo();
        int line = isKnown ? ((IXmlLineInfo)about!).LineNumber : 0;
        int column = isKnown ? ((IXmlLineInfo)about!).LinePosition : 0;
        problems.Add(severity, new Place(file, line, column, item), fault);
    }

    /// <summary>Adds an error at a line and column.</summary>
    public void ErrorAt(int line, int column, Fault fault) => problems.Add(Severity.Error, new Place(file, line, column, ""), fault);
}
