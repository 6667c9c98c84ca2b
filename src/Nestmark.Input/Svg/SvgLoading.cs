using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;

namespace Nestmark.Input.Svg;

/// <summary>Reads the XML of a drawing: no other file is opened, entities and nesting are bounded.</summary>
/// <remarks>Recipe: references/formats.md 9. The DOCTYPE is ignored unless the drawing needs entities of its own.</remarks>
internal static class SvgLoading
{
    private static readonly Regex ExternalEntity = new(
        @"<!ENTITY\s+(?:%\s+)?\S+\s+(?:SYSTEM|PUBLIC)\s", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant);

    /// <summary>The root element, or <c>null</c> after a problem.</summary>
    public static XElement? Load(ReadOnlyMemory<byte> bytes, SvgProblems problems)
    {
        try
        {
            return LoadWith(DtdProcessing.Ignore, bytes, problems);
        }
        catch (XmlException withoutEntities)
        {
            try
            {
                // Only now the DOCTYPE is looked into: drawings whose namespaces are entities need it.
                return HasDoctype(bytes) ? LoadWith(DtdProcessing.Parse, bytes, problems) : Refuse(withoutEntities, problems);
            }
            catch (XmlException trouble)
            {
                return Refuse(trouble, problems);
            }
        }
    }

    private static XElement? LoadWith(DtdProcessing processing, ReadOnlyMemory<byte> bytes, SvgProblems problems)
    {
        if (!IsShallow(processing, bytes, problems))
            return null;
        using XmlReader reader = Reader(processing, bytes);
        XDocument document = XDocument.Load(reader, LoadOptions.SetLineInfo);
        if (ExternalEntity.IsMatch(document.DocumentType?.InternalSubset ?? ""))
        {
            problems.Error(document.DocumentType, "", SvgFaults.ExternalEntity());
            return null;
        }
        XElement root = document.Root!;
        if (root.Name.LocalName == "svg")
            return root;
        problems.Error(root, "", SvgFaults.NotSvg(root.Name.LocalName));
        return null;
    }

    private static bool IsShallow(DtdProcessing processing, ReadOnlyMemory<byte> bytes, SvgProblems problems)
    {
        using XmlReader reader = Reader(processing, bytes);
        while (reader.Read())
        {
            if (reader.Depth <= SvgLimits.DeepestElement)
                continue;
            IXmlLineInfo line = (IXmlLineInfo)reader;
            problems.ErrorAt(line.LineNumber, line.LinePosition, SvgFaults.TooDeep());
            return false;
        }
        return true;
    }

    private static XmlReader Reader(DtdProcessing processing, ReadOnlyMemory<byte> bytes) => XmlReader.Create(
        new MemoryStream(bytes.ToArray(), false),
        new XmlReaderSettings
        {
            DtdProcessing = processing,
            XmlResolver = null,
            MaxCharactersFromEntities = SvgLimits.MostEntityCharacters,
            MaxCharactersInDocument = SvgLimits.LongestFileBytes,
        });

    private static bool HasDoctype(ReadOnlyMemory<byte> bytes) => bytes.Span.IndexOf("<!DOCTYPE"u8) >= 0;

    private static XElement? Refuse(XmlException trouble, SvgProblems problems)
    {
        // The limit on entities has no error code of its own; its message names the setting.
        bool isBomb = trouble.Message.Contains("MaxCharactersFromEntities", StringComparison.Ordinal);
        Fault fault = isBomb ? SvgFaults.EntityBomb() : SvgFaults.NotXml(FirstSentence(trouble.Message));
        problems.ErrorAt(trouble.LineNumber, trouble.LinePosition, fault);
        return null;
    }

    private static string FirstSentence(string message)
    {
        int end = message.IndexOf(". ", StringComparison.Ordinal);
        return (end < 0 ? message : message[..end]).TrimEnd('.');
    }
}
