using System.Text;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Input.Dxf;
using Nestmark.Input.Outlines;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input.Dxf;

/// <summary>DXF files as text in tests: pairs "code value", with | or a line end between them.</summary>
internal static class Drawings
{
    /// <summary>The example of references/formats.md 1.8, from memory of ASTM D6673; to be checked against the standard.</summary>
    public const string TestCard = """
        0 SECTION | 2 HEADER | 9 $ACADVER | 1 AC1009 | 0 ENDSEC
        0 SECTION | 2 BLOCKS
        0 BLOCK | 8 1 | 2 TESTCARD_M | 70 0 | 10 0.0 | 20 0.0 | 30 0.0
        0 POLYLINE | 8 1 | 66 1 | 70 1 | 10 0.0 | 20 0.0 | 30 0.0
        0 VERTEX | 8 1 | 10 0.0 | 20 0.0
        0 VERTEX | 8 1 | 10 200.0 | 20 0.0
        0 VERTEX | 8 1 | 10 200.0 | 20 100.0
        0 VERTEX | 8 1 | 10 0.0 | 20 100.0
        0 SEQEND | 8 1
        0 POINT | 8 2 | 10 0.0 | 20 0.0
        0 POINT | 8 2 | 10 200.0 | 20 0.0
        0 POINT | 8 2 | 10 200.0 | 20 100.0
        0 POINT | 8 2 | 10 0.0 | 20 100.0
        0 POINT | 8 4 | 10 100.0 | 20 0.0
        0 LINE | 8 7 | 10 20.0 | 20 50.0 | 11 180.0 | 21 50.0
        0 POINT | 8 13 | 10 100.0 | 20 50.0
        0 TEXT | 8 1 | 10 10.0 | 20 80.0 | 40 5.0 | 1 PIECE NAME: TESTCARD
        0 TEXT | 8 1 | 10 10.0 | 20 72.0 | 40 5.0 | 1 SIZE: M
        0 TEXT | 8 1 | 10 10.0 | 20 64.0 | 40 5.0 | 1 QUANTITY: 2
        0 TEXT | 8 1 | 10 10.0 | 20 30.0 | 40 5.0 | 1 MATERIAL: SHELL
        0 ENDBLK | 8 1
        0 ENDSEC
        0 SECTION | 2 ENTITIES
        0 INSERT | 8 1 | 2 TESTCARD_M | 10 0.0 | 20 0.0
        0 TEXT | 8 1 | 10 0.0 | 20 -20.0 | 40 5.0 | 1 STYLE NAME: DEMO
        0 TEXT | 8 1 | 10 0.0 | 20 -28.0 | 40 5.0 | 1 SAMPLE SIZE: M
        0 TEXT | 8 1 | 10 0.0 | 20 -36.0 | 40 5.0 | 1 UNITS: METRIC
        0 ENDSEC
        0 EOF
        """;

    /// <summary>The bytes of a file.</summary>
    public static byte[] Bytes(string pairs)
    {
        StringBuilder text = new();
        foreach (string pair in pairs.Split('|', '\n').Select(pair => pair.Trim('\r').TrimStart().TrimEnd('\r')).Where(pair => pair.Length > 0))
        {
            string[] parts = pair.Split(' ', 2);
            text.Append(parts[0]).Append("\r\n").Append(parts.Length > 1 ? parts[1].TrimEnd() : "").Append("\r\n");
        }
        return Encoding.Latin1.GetBytes(text.ToString());
    }

    /// <summary>A plain drawing in millimeters.</summary>
    public static string Plain(string entities, string blocks = "") => $"""
        0 SECTION | 2 HEADER | 9 $INSUNITS | 70 4 | 0 ENDSEC
        0 SECTION | 2 BLOCKS | {blocks}
        0 ENDSEC | 0 SECTION | 2 ENTITIES | {entities}
        0 ENDSEC | 0 EOF
        """;

    /// <summary>A pattern in millimeters with one piece P, a rectangle of 200 x 100 mm unless the entities draw it.</summary>
    public static string Pattern(string entities, string outline = Rectangle) => $"""
        0 SECTION | 2 BLOCKS | 0 BLOCK | 8 1 | 2 P | 70 0 | 10 0 | 20 0
        {outline}
        {entities}
        0 TEXT | 8 1 | 10 9 | 20 9 | 1 PIECE NAME: P | 0 ENDBLK | 0 ENDSEC
        0 SECTION | 2 ENTITIES | 0 INSERT | 8 1 | 2 P | 10 0 | 20 0
        0 TEXT | 8 1 | 10 0 | 20 0 | 1 UNITS: METRIC | 0 ENDSEC | 0 EOF
        """;

    public const string Rectangle = "0 POLYLINE | 8 1 | 70 1 | 0 VERTEX | 8 1 | 10 0 | 20 0 | 0 VERTEX | 8 1 | 10 200 | 20 0 | 0 VERTEX | 8 1 | 10 200 | 20 100 | 0 VERTEX | 8 1 | 10 0 | 20 100 | 0 SEQEND";

    /// <summary>A drawing and what was found in it.</summary>
    public static (DxfDrawing? Drawing, IReadOnlyList<Problem> Problems) Load(byte[] bytes)
    {
        ProblemList problems = new();
        return (DxfDrawing.Load(bytes, new DxfProblems("d.dxf", problems), new DrawingSettings("d.dxf", new JobContext("job.yaml", problems))), problems.All);
    }

    /// <summary>A piece of a drawing that has no errors.</summary>
    public static DrawnPiece Piece(byte[] bytes, string name, string cut = "1", OutlineMeaning? line = null, string size = "")
    {
        (DrawnPiece? piece, IReadOnlyList<Problem> problems) = Try(bytes, name, cut, line, size);
        Assert.Empty(problems.Where(problem => problem.Severity == Severity.Error).Select(problem => problem.ToString()));
        return piece!;
    }

    /// <summary>A piece of a drawing, or <c>null</c>, and every problem.</summary>
    public static (DrawnPiece? Piece, IReadOnlyList<Problem> Problems) Try(byte[] bytes, string name, string cut = "1", OutlineMeaning? line = null, string size = "")
    {
        ProblemList problems = new();
        DxfDrawing? drawing = DxfDrawing.Load(bytes, new DxfProblems("d.dxf", problems), new DrawingSettings("d.dxf", new JobContext("job.yaml", problems)));
        PieceWish wish = new(name, size, line, Nestmark.Input.Quantities.CutText.Read(cut).Value);
        if (drawing?.FaultOf(wish) is Fault fault)
            problems.Add(Severity.Error, new Place("job.yaml", 1, 1, ""), fault);
        else if (drawing?.Piece(wish) is DrawnPiece piece)
            return (piece, problems.All);
        return (null, problems.All);
    }

    /// <summary>The outline as "x y, x y", in millimeters.</summary>
    public static string Text(DrawnPiece piece) => string.Join(", ", piece.Outline.Select(vertex => Text(vertex.Point)));

    public static string Text(Point point) => FormattableString.Invariant($"{point.XMillimeters:0.###} {point.YMillimeters:0.###}");

    /// <summary>The only problem's text.</summary>
    public static string OnlyProblem(IReadOnlyList<Problem> problems) => Assert.Single(problems).ToString();
}
