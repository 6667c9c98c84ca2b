namespace Nestmark.Input.Dxf;

/// <summary>The tags from one code 0 to the next: an entity or a marker of structure.</summary>
internal sealed class DxfRecord(string type, int line)
{
    public string Type { get; } = type;

    public int Line { get; } = line;

    public List<DxfTag> Tags { get; } = [];

    /// <summary>The vertices of a polyline, the attributes of an insert.</summary>
    public List<DxfRecord> Children { get; } = [];

    /// <summary>The first tag that should have been a number and was none.</summary>
    public DxfTag? Broken { get; private set; }

    public string Layer => Text(8, "0").Trim();

    public string Text(int code, string otherwise)
    {
        int index = Tags.FindIndex(tag => tag.Code == code);
        return index < 0 ? otherwise : Tags[index].Value;
    }

    /// <summary>The number of a tag; marks the record as broken when there is another text in its place.</summary>
    public double Number(int code, double otherwise)
    {
        int index = Tags.FindIndex(tag => tag.Code == code);
        return index < 0 ? otherwise : NumberOf(Tags[index]);
    }

    /// <summary>A number that must be there.</summary>
    public double Needed(int code)
    {
        if (Tags.Exists(tag => tag.Code == code))
            return Number(code, 0);
        Broken ??= new DxfTag(code, "", Line);
        return 0;
    }

    public int Whole(int code, int otherwise) => (int)Math.Round(Number(code, otherwise));

    public double NumberOf(DxfTag tag)
    {
        if (tag.Number is double number)
            return number;
        Broken ??= tag;
        return 0;
    }
}
