using System.Text;
using CsCheck;
using Nestmark.Input;
using Nestmark.Input.Dxf;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input.Dxf;

/// <summary>Files that are broken, cut off or made to harm: problems with a place and a remedy, never an exception or a stall.</summary>
public sealed class HostileDxfTests
{
    [Theory]
    [InlineData("", "d.dxf:1:1: The file is no DXF: it has no sections.")]
    [InlineData("hello\nworld\n", "d.dxf:1:1: The file is no DXF: found \"hello\" where a group code, a whole number, was expected.")]
    [InlineData("  0\nSECTION\n  2\nENTITIES\n  0\nLINE\nx\n5\n", "d.dxf:7:1: Found \"x\" where a group code, a whole number, was expected.")]
    [InlineData("  0\nSECTION\n  2\nENTITIES\n  0\nLINE\n 10\n", "d.dxf:7:1: The file breaks off after a group code.")]
    [InlineData("AutoCAD Binary DXF\r\n\u001a\0", "d.dxf:1:1: The file is a binary DXF, which is not read.")]
    public void Files_that_are_no_DXF_are_refused_at_their_line(string text, string problem)
    {
        (DxfDrawing? drawing, IReadOnlyList<Problem> problems) = Drawings.Load(Encoding.Latin1.GetBytes(text));
        Assert.Null(drawing);
        Assert.StartsWith(problem, Drawings.OnlyProblem(problems), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 LINE | 8 0 | 10 nan | 20 0 | 11 5 | 21 5", "A LINE has \"nan\" for code 10; expected a number within a thousand million.")]
    [InlineData("0 LINE | 8 0 | 10 1e400 | 20 0 | 11 5 | 21 5", "A LINE has \"1e400\" for code 10;")]
    [InlineData("0 CIRCLE | 8 0 | 10 0 | 20 0", "A CIRCLE lacks the value of code 40.")]
    [InlineData("0 CIRCLE | 8 0 | 10 0 | 20 0 | 40 200000", "A CIRCLE reaches beyond 100 m.")]
    [InlineData("0 LWPOLYLINE | 8 0 | 70 1 | 10 0 | 20 0 | 42 99999 | 10 5 | 20 0 | 10 5 | 20 5", "A LWPOLYLINE has \"a bulge above 10,000\" for code 42;")]
    [InlineData("0 SPLINE | 8 0 | 71 3 | 40 0 | 40 1 | 10 0 | 20 0 | 10 5 | 20 5", "A SPLINE has \"knots and points that do not fit\" for code 72;")]
    [InlineData("0 SPLINE | 8 0 | 71 999999999 | 40 0 | 10 0 | 20 0", "A SPLINE has \"knots and points that do not fit\" for code 72;")]
    [InlineData("0 INSERT | 8 0 | 2 NOWHERE | 10 0 | 20 0", "The drawing shows a block NOWHERE that it does not hold.")]
    public void A_broken_entity_is_an_error_at_its_line(string entity, string what)
    {
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(Drawings.Plain(entity + " | 0 CIRCLE | 8 0 | 10 0 | 20 0 | 40 50")));
        Problem problem = Assert.Single(problems, problem => problem.Severity == Severity.Error);
        Assert.StartsWith(what, problem.What, StringComparison.Ordinal);
        Assert.True(problem.Where.Line > 10);
    }

    [Fact]
    public void Blocks_that_show_themselves_are_refused()
    {
        string blocks = "0 BLOCK | 2 A | 10 0 | 20 0 | 0 INSERT | 8 0 | 2 B | 10 0 | 20 0 | 0 ENDBLK | 0 BLOCK | 2 B | 10 0 | 20 0 | 0 INSERT | 8 0 | 2 A | 10 0 | 20 0 | 0 ENDBLK";
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(Drawings.Plain("0 INSERT | 8 0 | 2 A | 10 0 | 20 0", blocks)));
        Assert.Contains(problems, problem => problem.What == "The block A shows itself.");
    }

    [Fact]
    public void A_bomb_of_nested_blocks_is_stopped()
    {
        string blocks = "0 BLOCK | 2 B0 | 10 0 | 20 0 | 0 CIRCLE | 8 0 | 10 0 | 20 0 | 40 5 | 0 ENDBLK | " + string.Join(" | ", Enumerable.Range(1, 9).Select(i =>
            $"0 BLOCK | 2 B{i} | 10 0 | 20 0 | 0 INSERT | 8 0 | 2 B{i - 1} | 10 0 | 20 0 | 70 30000 | 71 30000 | 44 1 | 45 1 | 0 ENDBLK"));
        (_, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(Drawings.Plain("0 INSERT | 8 0 | 2 B9 | 10 0 | 20 0", blocks)));
        Assert.Contains(problems, problem => problem.What.StartsWith("The file has more than 500000 segments in its blocks.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_file_without_its_end_is_noted()
    {
        string pairs = Drawings.TestCard.Replace("0 EOF", "", StringComparison.Ordinal);
        (DxfDrawing? drawing, IReadOnlyList<Problem> problems) = Drawings.Load(Drawings.Bytes(pairs));
        Assert.NotNull(drawing);
        Assert.Equal("The file ends without EOF; its end may be missing.", Assert.Single(problems).What);
    }

    [Fact]
    public void Texts_are_read_in_the_code_page_that_the_file_names()
    {
        string pairs = Drawings.TestCard.Replace("9 $ACADVER | 1 AC1009", "9 $DWGCODEPAGE | 3 ANSI_1250", StringComparison.Ordinal);
        byte[] bytes = Drawings.Bytes(pairs.Replace("SIZE: M", "SIZE: \u00b3", StringComparison.Ordinal));
        Assert.Equal(["\u0142"], Drawings.Load(bytes).Drawing!.SizesOf("TESTCARD"));
        bytes = Drawings.Bytes(Drawings.TestCard.Replace("SIZE: M", "SIZE: \\U+00E4%%d", StringComparison.Ordinal));
        Assert.Equal(["\u00e4\u00b0"], Drawings.Load(bytes).Drawing!.SizesOf("TESTCARD"));
    }

    [Fact]
    public void Good_files_with_bytes_changed_never_throw()
    {
        byte[][] files = [Drawings.Bytes(Drawings.TestCard), [.. File.ReadAllBytes(Fixtures.PathOf("dxf/shapes.dxf"))[^14_000..]], Drawings.Bytes(Drawings.Plain(Mixed, Block))];
        files[1] = [.. Drawings.Bytes("0 SECTION | 2 HEADER | 9 $INSUNITS | 70 4 | 0 ENDSEC | 0 SECTION | 2 ENTITIES"), .. FromFirstEntity(files[1])];
        Gen<(int File, (int At, byte Value)[] Changes)> changes = Gen.Select(
            Gen.Int[0, 2], Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 21].Select(i => (byte)"0123456789.-eE \r\nANZ%\\"[i])).Array[1, 5]);
        changes.Check(2_000, (file, flips) =>
        {
            byte[] bytes = [.. files[file]];
            foreach ((int at, byte value) in flips)
                bytes[at % bytes.Length] = value;
            Survey(bytes);
        });
    }

    [Fact]
    public void Good_files_cut_off_anywhere_never_throw()
    {
        byte[] bytes = Drawings.Bytes(Drawings.TestCard);
        for (int length = 0; length < bytes.Length; length += 3)
            Survey(bytes[..length]);
    }

    private const string Mixed = "0 LINE | 8 0 | 10 0 | 20 0 | 11 90 | 21 0 | 0 ARC | 8 0 | 10 0 | 20 0 | 40 90 | 50 0 | 51 90 | 0 LINE | 8 0 | 10 0 | 20 0 | 11 0 | 21 90 "
        + "| 0 SPLINE | 8 0 | 70 4 | 71 2 | 40 0 | 40 0 | 40 0 | 40 1 | 40 1 | 40 1 | 41 1 | 41 2 | 41 1 | 10 200 | 20 0 | 10 250 | 20 99 | 10 300 | 20 0 | 0 LINE | 8 0 | 10 300 | 20 0 | 11 200 | 21 0 "
        + "| 0 ELLIPSE | 8 0 | 10 500 | 20 0 | 11 60 | 21 10 | 40 0.5 | 41 0 | 42 6.283185307 | 0 INSERT | 8 0 | 2 B | 10 700 | 20 0 | 41 -1 | 42 2 | 50 30 | 70 2 | 71 2 | 44 200 | 45 200 | 0 TEXT | 8 0 | 10 500 | 20 0 | 40 5 | 1 NAME: X";

    private const string Block = "0 BLOCK | 8 0 | 2 B | 70 0 | 10 1 | 20 1 | 0 LWPOLYLINE | 8 0 | 90 3 | 70 1 | 10 0 | 20 0 | 42 0.5 | 10 50 | 20 0 | 10 50 | 20 50 | 0 ENDBLK";

    private static byte[] FromFirstEntity(byte[] bytes)
    {
        int at = bytes.AsSpan().IndexOf("LWPOLYLINE"u8);
        return [.. "  0\n"u8, .. bytes[at..]];
    }

    /// <summary>Reads a drawing and makes every piece in it.</summary>
    private static void Survey(byte[] bytes)
    {
        DrawingReading reading = DrawingListing.Read("d.dxf", new MemoryFiles().With("d.dxf", bytes));
        Assert.True(reading.Pieces.Length > 0 || reading.Problems.Length > 0);
    }
}
