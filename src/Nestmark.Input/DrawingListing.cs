using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Input.Outlines;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Input;

/// <summary>Tells which pieces a drawing holds, without a job. Never throws for what the file holds.</summary>
public static class DrawingListing
{
    /// <summary>Whether a file is a drawing, by its extension.</summary>
    public static bool IsDrawing(string path) => DrawingReaders.For(path) is not null;

    /// <summary>Reads a drawing and makes every piece in it.</summary>
    /// <param name="path">As the user named it; see <see cref="IsDrawing"/>.</param>
    /// <param name="files">Where files come from.</param>
    /// <exception cref="ArgumentException">The file is no drawing by its extension.</exception>
    public static DrawingReading Read(string path, IFileSource files)
    {
        DrawingReader reader = DrawingReaders.For(path) ?? throw new ArgumentException("The extension is not that of a drawing.", nameof(path));
        FileContent content = files.Read(path, reader.LongestFileBytes);
        ProblemList problems = new();
        Fault? fault = content.State switch
        {
            FileState.Missing => JobFaults.MissingFile(path),
            FileState.TooLarge => JobFaults.TooLarge(reader.LongestFileBytes >> 20),
            FileState.Unreadable => JobFaults.Unreadable(),
            _ => null,
        };
        if (fault is not null)
            problems.Add(Severity.Error, new Place(path, 0, 0, ""), fault);
        IDrawing? drawing = fault is null ? reader.Load(content.Bytes, path, problems, new DrawingSettings(path, new JobContext(path, problems))) : null;
        ImmutableArray<ListedPiece> pieces = drawing is null ? [] : [.. drawing.Names.SelectMany(name => Listed(drawing, name, path, problems))];
        return new DrawingReading(pieces, [.. problems.All]);
    }

    private static IEnumerable<ListedPiece> Listed(IDrawing drawing, string name, string path, ProblemList problems)
    {
        IReadOnlyList<string> sizes = drawing.SizesOf(name);
        foreach (string size in sizes.Count == 0 ? [""] : sizes)
        {
            PieceWish wish = new(name, size, OutlineMeaning.CuttingLine, default);
            if (drawing.FaultOf(wish) is Fault fault)
                problems.Add(Severity.Error, new Place(path, 0, 0, "#" + name), fault);
            else if (drawing.Piece(wish) is DrawnPiece piece)
                yield return Listed(name, size, piece);
        }
    }

    private static ListedPiece Listed(string name, string size, DrawnPiece piece)
    {
        Box box = Box.Around([.. piece.Outline.Select(vertex => vertex.Point)]);
        return new ListedPiece(name, size, Length.FromMicrometers(box.Width), Length.FromMicrometers(box.Height), piece.Said);
    }
}
