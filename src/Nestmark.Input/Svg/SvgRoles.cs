using System.Xml.Linq;

namespace Nestmark.Input.Svg;

/// <summary>Finds out what an element is for: data-role first, then its classes, then its id.</summary>
internal static class SvgRoles
{
    private static readonly (string Word, SvgRole Role)[] Words =
    [
        ("outline", SvgRole.Outline), ("grain", SvgRole.Grain), ("fold", SvgRole.Fold), ("notch", SvgRole.Notch),
        ("line", SvgRole.Line), ("mark", SvgRole.Mark), ("corner", SvgRole.Corner),
    ];

    /// <summary>The role an element gives itself; none when it says nothing.</summary>
    public static SvgRole Of(XElement element)
    {
        string classes = element.Attribute("data-role")?.Value + " " + element.Attribute("class")?.Value;
        foreach (string word in classes.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))
        {
            if (RoleOf(word) is SvgRole role)
                return role;
        }
        return OfWord(element.Attribute("id")?.Value ?? "");
    }

    /// <summary>What people call a shape of this role.</summary>
    public static string NameOf(SvgRole role) => role switch
    {
        SvgRole.Grain => "grainline",
        SvgRole.Fold => "fold line",
        _ => Words.First(pair => pair.Role == role).Word,
    };

    /// <summary>Ids and layers speak as "notch", "notch3", "notch-3" or "notch_a".</summary>
    public static SvgRole OfWord(string id)
    {
        foreach ((string word, SvgRole role) in Words)
        {
            if (id.StartsWith(word, StringComparison.Ordinal) && (id.Length == word.Length || !char.IsLetter(id[word.Length])))
                return role;
        }
        return SvgRole.None;
    }

    private static SvgRole? RoleOf(string word)
    {
        foreach ((string known, SvgRole role) in Words)
        {
            if (known == word)
                return role;
        }
        return null;
    }
}
