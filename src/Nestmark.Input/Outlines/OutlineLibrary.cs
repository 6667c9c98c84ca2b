using System.Collections.Immutable;
using Nestmark.Input.Yaml;

namespace Nestmark.Input.Outlines;

/// <summary>Fetches outlines from drawings; each drawing is read once, each of its problems reported once.</summary>
internal sealed class OutlineLibrary(IFileSource files, JobContext context, ImmutableDictionary<string, DrawingSettings> settings)
{
    private readonly Dictionary<string, IDrawing?> _drawings = new(StringComparer.Ordinal);
    private readonly Dictionary<(string File, PieceWish Wish), DrawnPiece?> _pieces = [];
    private readonly List<string> _filesRead = [];

    /// <summary>Paths of the drawings read, in the order of first use.</summary>
    public IReadOnlyList<string> FilesRead => _filesRead;

    /// <summary>Whether the drawing itself says in which size the piece is, so that the job's sizes choose among them.</summary>
    /// <param name="address">"FILE#NAME".</param>
    /// <param name="node">Where the job names it.</param>
    /// <param name="item">The key that names it.</param>
    public bool SaysSizes(string address, JobNode node, string item)
    {
        (string file, string name) = Split(address);
        return FormFault(address, file, name) is null && Drawing(file, node, item)?.SizesOf(name).Count > 0;
    }

    /// <summary>The piece that "FILE#NAME" names, or <c>null</c> after problems.</summary>
    /// <param name="wish">What the job wants; its name is "FILE#NAME", sizes filled in.</param>
    /// <param name="node">Where the job names it.</param>
    /// <param name="item">The key that names it.</param>
    public DrawnPiece? Find(PieceWish wish, JobNode node, string item)
    {
        (string file, string name) = Split(wish.Name);
        if (FormFault(wish.Name, file, name) is Fault fault)
        {
            context.Error(node, item, fault);
            return null;
        }
        if (Drawing(file, node, item) is not IDrawing drawing)
            return null;
        PieceWish inside = wish with { Name = name };
        if (drawing.FaultOf(inside) is Fault missing)
        {
            context.Error(node, item, missing);
            return null;
        }
        if (!_pieces.TryGetValue((file, inside), out DrawnPiece? piece))
        {
            piece = drawing.Piece(inside) is DrawnPiece drawn ? drawn with { DrawnAt = file + drawn.DrawnAt } : null;
            _pieces.Add((file, inside), piece);
        }
        return piece;
    }

    /// <summary>Notes settings of drawings that no piece names; to be asked when all pieces are read.</summary>
    public void NoteUnused()
    {
        foreach (DrawingSettings unused in settings.Values.Where(one => !_drawings.ContainsKey(one.File)).OrderBy(one => one.Node!.Line).ThenBy(one => one.Node!.Column))
            unused.Note("", ScaleFaults.Unused(unused.File));
    }

    private static (string File, string Name) Split(string address)
    {
        int split = address.IndexOf('#', StringComparison.Ordinal);
        return split < 0 ? (address, "") : (address[..split], address[(split + 1)..]);
    }

    private static Fault? FormFault(string address, string file, string name)
    {
        if (file.Contains("://", StringComparison.Ordinal))
            return JobFaults.OutlineAddress(file);
        if (file.Length == 0 || name.Length == 0 || name.Contains('#'))
            return JobFaults.OutlineForm(address);
        return DrawingReaders.For(file) is null ? JobFaults.OutlineFormat(file, [.. DrawingReaders.All.Select(reader => reader.Format)]) : null;
    }

    private IDrawing? Drawing(string file, JobNode node, string item)
    {
        if (!_drawings.TryGetValue(file, out IDrawing? drawing))
        {
            drawing = Load(file, DrawingReaders.For(file)!, node, item);
            _drawings.Add(file, drawing);
        }
        return drawing;
    }

    private IDrawing? Load(string file, DrawingReader reader, JobNode node, string item)
    {
        string path = PathOf(file);
        FileContent content = files.Read(path, reader.LongestFileBytes);
        Fault? fault = content.State switch
        {
            FileState.Missing => JobFaults.MissingDrawing(file),
            FileState.TooLarge => JobFaults.TooLarge(reader.LongestFileBytes >> 20),
            FileState.Unreadable => JobFaults.Unreadable(),
            _ => null,
        };
        if (fault is not null)
        {
            context.Error(node, item, fault);
            return null;
        }
        _filesRead.Add(path);
        return reader.Load(content.Bytes, path, context.Problems, settings.GetValueOrDefault(file) ?? new DrawingSettings(file, context));
    }

    /// <summary>The path beside the job file, with forward slashes on every machine, since it is shown in problems.</summary>
    private string PathOf(string file)
    {
        string folder = Path.GetDirectoryName(context.File) ?? "";
        return Path.Combine(folder, file).Replace('\\', '/');
    }
}
