using System.Text;

namespace Nestmark.Input.Dxf;

/// <summary>Finds out how the text of a file is written.</summary>
/// <remarks>Source: references/formats.md 2.2. From AC1021 on UTF-8; before, the code page that the header names.</remarks>
internal static class DxfEncoding
{
    private const int HeaderTags = 4_000;

    /// <summary>The encoding; where the file names none, UTF-8 if the bytes are valid in it, else Windows 1252.</summary>
    public static Encoding Of(ReadOnlyMemory<byte> bytes)
    {
        (string version, string page) = Header(bytes);
        bool isNew = version.StartsWith("AC", StringComparison.Ordinal) && string.CompareOrdinal(version, "AC1021") >= 0;
        if (isNew)
            return Encoding.UTF8;
        int number = NumberOf(page);
        bool isUnicode = System.Text.Unicode.Utf8.IsValid(bytes.Span);
        return number == 0 && isUnicode ? Encoding.UTF8 : CodePage(number == 0 ? 1252 : number);
    }

    private static (string Version, string Page) Header(ReadOnlyMemory<byte> bytes)
    {
        DxfTagReader reader = new(bytes, Encoding.Latin1);
        (string version, string page, string variable) = ("", "", "");
        for (int i = 0; i < HeaderTags && reader.Next() is DxfTag tag; i++)
        {
            if (tag.Code == 0 && tag.Value.Trim() is "ENDSEC" or "EOF")
                break;
            if (tag.Code == 9)
                variable = tag.Value.Trim();
            else if (variable == "$ACADVER" && tag.Code == 1)
                version = tag.Value.Trim();
            else if (variable == "$DWGCODEPAGE")
                page = tag.Value.Trim();
        }
        return (version, page);
    }

    private static int NumberOf(string page) =>
        page.StartsWith("ANSI_", StringComparison.OrdinalIgnoreCase) && int.TryParse(page.AsSpan(5), out int number) ? number : 0;

    private static Encoding CodePage(int number) => number is 874 or 932 or 936 or 949 or 950 or (>= 1250 and <= 1258)
        ? CodePagesEncodingProvider.Instance.GetEncoding(number) ?? Encoding.Latin1
        : Encoding.Latin1;
}
