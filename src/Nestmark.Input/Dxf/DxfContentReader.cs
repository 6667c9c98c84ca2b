using Nestmark.Geometry.Curves;

namespace Nestmark.Input.Dxf;

/// <summary>Reads sections, blocks and entities from the tags of a file.</summary>
internal sealed class DxfContentReader(DxfProblems problems)
{
    private readonly DxfContent _content = new();
    private string _section = "";
    private DxfBlock? _block;
    private DxfRecord? _open;
    private int _entities;
    private int _segments;
    private bool _sawEnd;
    private bool _isBroken;

    /// <summary>The content, or <c>null</c> after a problem that spoils all of it.</summary>
    public DxfContent? Read(ReadOnlyMemory<byte> bytes)
    {
        DxfTagReader tags = new(bytes, DxfEncoding.Of(bytes));
        DxfRecord? current = null;
        bool hasSection = false;
        while (!_isBroken && !_sawEnd && tags.Next() is DxfTag tag)
        {
            if (tag.Code != 0)
            {
                AddTag(current, tag);
                continue;
            }
            Take(current);
            current = new DxfRecord(tag.Value.Trim().ToUpperInvariant(), tag.Line);
            hasSection |= current.Type == "SECTION";
        }
        // What a break cut off in the middle is not told as one more fault.
        if (tags.Fault is null)
            Take(current);
        Finish();
        if (!hasSection && !_isBroken)
            return Refuse(1, tags.Fault is null ? DxfFaults.NotDxf() : DxfFaults.NotDxf(tags.Fault));
        if (tags.Fault is not null)
            return Refuse(tags.Line, tags.Fault);
        if (!_sawEnd && !_isBroken)
            problems.Note(tags.Line, "", DxfFaults.NoEnd());
        return _isBroken ? null : _content;
    }

    private void AddTag(DxfRecord? record, DxfTag tag)
    {
        if (record is null)
            return;
        record.Tags.Add(tag);
        if (record.Tags.Count > DxfLimits.MostTagsInRecord)
            Refuse(tag.Line, DxfFaults.TooMuch($"{DxfLimits.MostTagsInRecord} values in one entity"));
    }

    private void Take(DxfRecord? record)
    {
        if (record is null || _isBroken)
            return;
        if (record.Type == "EOF")
            _sawEnd = true;
        else if (record.Type is "SECTION" or "ENDSEC")
            EnterSection(record);
        else if (_section is "BLOCKS" or "ENTITIES")
            TakeDrawn(record);
    }

    private void EnterSection(DxfRecord record)
    {
        Finish();
        _block = null;
        _section = record.Type == "SECTION" ? record.Text(2, "").Trim() : "";
        if (_section != "HEADER")
            return;
        for (int i = 0; i + 1 < record.Tags.Count; i++)
        {
            if (record.Tags[i].Code == 9)
                _content.Header.TryAdd(record.Tags[i].Value.Trim(), record.Tags[i + 1].Value.Trim());
        }
    }

    private void TakeDrawn(DxfRecord record)
    {
        if (_open is not null && record.Type is "VERTEX" or "ATTRIB")
        {
            _open.Children.Add(record);
            CountEntity(record);
            return;
        }
        Finish();
        if (record.Type == "BLOCK")
            OpenBlock(record);
        else if (record.Type == "ENDBLK")
            _block = null;
        else if (record.Type != "SEQEND")
            _open = record;
    }

    private void OpenBlock(DxfRecord record)
    {
        _block = new DxfBlock(record.Text(2, "").Trim(), record.Line, new CurvePoint(record.Number(10, 0), record.Number(20, 0)));
        if ((record.Whole(70, 0) & 4) != 0)
            _content.LeftOut.Add("drawing from another file");
        _content.Add(_block);
        CountEntity(record);
    }

    /// <summary>Turns the record that waited for its parts into an entity.</summary>
    private void Finish()
    {
        if (_open is not DxfRecord record || _isBroken)
            return;
        _open = null;
        CountEntity(record);
        List<DxfEntity>? target = _section == "BLOCKS" ? _block?.Entities : _content.Entities;
        if (target is null || record.Whole(67, 0) == 1)
            _content.LeftOut.Add(record.Type + (target is null ? " outside of blocks" : " on a print layout"));
        else if (record.Whole(60, 0) == 1)
            _content.LeftOut.Add(record.Type + " made invisible");
        else
            AddEntity(record, target);
    }

    private void AddEntity(DxfRecord record, List<DxfEntity> target)
    {
        foreach (DxfEntity entity in DxfEntityReader.Read(record, _content.LeftOut, fault => problems.Note(record.Line, "", fault)))
        {
            target.Add(entity);
            _segments += entity.SegmentCount;
        }
        DxfTag? broken = record.Broken ?? record.Children.Select(child => child.Broken).FirstOrDefault(tag => tag is not null);
        if (broken is DxfTag tag)
            problems.Error(tag.Line, "", DxfFaults.BadNumber(record.Type, tag));
        if (_segments > DxfLimits.MostSegments)
            Refuse(record.Line, DxfFaults.TooMuch($"{DxfLimits.MostSegments} segments"));
    }

    private void CountEntity(DxfRecord record)
    {
        if (++_entities > DxfLimits.MostEntities)
            Refuse(record.Line, DxfFaults.TooMuch($"{DxfLimits.MostEntities} entities"));
    }

    private DxfContent? Refuse(int line, Fault fault)
    {
        if (!_isBroken)
            problems.Error(line, "", fault);
        _isBroken = true;
        return null;
    }
}
