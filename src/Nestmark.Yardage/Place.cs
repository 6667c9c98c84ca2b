using System.Globalization;

namespace Nestmark.Yardage;

/// <summary>Where in the user's files something stands.</summary>
/// <param name="File">File name as the user gave it.</param>
/// <param name="Line">Line from 1; 0 when it is about the whole file.</param>
/// <param name="Column">Column from 1; 0 when not known.</param>
/// <param name="Item">Key or element, as "pieces.front.seam" or "#front"; may be empty.</param>
public sealed record Place(string File, int Line, int Column, string Item)
{
    /// <summary>"file:line:column (item)", without the parts that are not known.</summary>
    public override string ToString()
    {
        string text = File;
        if (Line > 0)
            text += string.Create(CultureInfo.InvariantCulture, $":{Line}");
        if (Line > 0 && Column > 0)
            text += string.Create(CultureInfo.InvariantCulture, $":{Column}");
        return Item.Length > 0 ? $"{text} ({Item})" : text;
    }
}
