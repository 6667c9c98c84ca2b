using Nestmark.Input.Svg;
using Nestmark.Input.Yaml;

namespace Nestmark.Input.Outlines;

/// <summary>Fetches outlines from drawings; each drawing is read once, each of its problems reported once.</summary>
internal sealed class OutlineLibrary(IFileSource files, JobContext context)
{
    private readonly Dictionary<string, SvgDrawing?> _drawings = new(StringComparer.Ordinal);
    private readonly Dictionary<(string File, string Id), DrawnPiece?> _pieces = [];
    private readonly List<string> _filesRead = [];

    /// <summary>Paths of the drawings read, in the order of first use.</summary>
    public IReadOnlyList<string> FilesRead => _filesRead;

    /// <summary>The piece that "FILE#ID" names, or <c>null</c> after problems.</summary>
    /// <param name="address">File and id, sizes filled in.</param>
    /// <param name="node">Where the job names it.</param>
    /// <param name="item">The key that names it.</param>
    public DrawnPiece? Find(string address, JobNode node, string item)
    {
        int split = address.IndexOf('#', StringComparison.Ordinal);
        (string file, string id) = (split < 0 ? address : address[..split], split < 0 ? "" : address[(split + 1)..]);
        if (FormFault(address, file, id) is Fault fault)
        {
            context.Error(node, item, fault);
            return null;
        }
        if (!_drawings.ContainsKey(file))
            _drawings.Add(file, Load(file, node, item));
        if (_drawings[file] is not SvgDrawing drawing)
            return null;
        if (!drawing.ById.ContainsKey(id))
        {
            context.Error(node, item, SvgFaults.MissingId(id, drawing.Ids()));
            return null;
        }
        if (!_pieces.TryGetValue((file, id), out DrawnPiece? piece))
        {
            piece = drawing.Piece(id) is DrawnPiece drawn ? drawn with { DrawnAt = file + drawing.LineOf(id) } : null;
            _pieces.Add((file, id), piece);
        }
        return piece;
    }

    private static Fault? FormFault(string address, string file, string id)
    {
        if (file.Contains("://", StringComparison.Ordinal))
            return JobFaults.OutlineAddress(file);
        if (file.Length == 0 || id.Length == 0 || id.Contains('#'))
            return JobFaults.OutlineForm(address);
        return file.EndsWith(".svg", StringComparison.OrdinalIgnoreCase) ? null : JobFaults.OutlineFormat(file);
    }

    private SvgDrawing? Load(string file, JobNode node, string item)
    {
        string path = PathOf(file);
        FileContent content = files.Read(path, SvgLimits.LongestFileBytes);
        Fault? fault = content.State switch
        {
            FileState.Missing => JobFaults.MissingDrawing(file),
            FileState.TooLarge => JobFaults.TooLarge(SvgLimits.LongestFileBytes >> 20),
            FileState.Unreadable => JobFaults.Unreadable(),
            _ => null,
        };
        if (fault is not null)
        {
            context.Error(node, item, fault);
            return null;
        }
        _filesRead.Add(path);
        return SvgDrawing.Load(content.Bytes, new SvgProblems(path, context.Problems));
    }

    /// <summary>The path beside the job file, with forward slashes on every machine, since it is shown in problems.</summary>
    private string PathOf(string file)
    {
        string folder = Path.GetDirectoryName(context.File) ?? "";
        return Path.Combine(folder, file).Replace('\\', '/');
    }
}
