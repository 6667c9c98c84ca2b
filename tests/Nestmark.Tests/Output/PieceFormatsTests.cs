using System.Text;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Output;
using Nestmark.Pieces;
using Nestmark.Tests.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Output;

/// <summary>Pieces written for other programs and read back are the same pieces, to the micrometer; outlines and notches within 20 micrometers, which is what the reader thins by. Only the letters of corners may begin elsewhere.</summary>
public sealed class PieceFormatsTests
{
    [Theory]
    [InlineData("harbour-smock/job.yaml", "dxf")]
    [InlineData("harbour-smock/job.yaml", "svg")]
    [InlineData("small-apron/job.yaml", "dxf")]
    [InlineData("small-apron/job.yaml", "svg")]
    [InlineData("dxf-story/job.yaml", "dxf")]
    [InlineData("dxf-story/job.yaml", "svg")]
    public void What_was_written_reads_back_as_the_same_pieces(string fixture, string format)
    {
        Job job = Jobs.Good(JobReader.Read(Fixtures.PathOf(fixture), new DiskFiles()));
        byte[] file = format == "dxf" ? PiecesDxf.Write(job) : PiecesSvg.Write(job);
        foreach (JobPiece written in job.Pieces)
        {
            Piece piece = written.Piece;
            AssertSame(piece, ReadBack(piece, file, format, "seam", piece.Name), piece.SeamLine);
            Piece cut = ReadBack(piece, file, format, "cut", format == "svg" && HasAllowance(piece) ? Address(piece) + "-cut" : piece.Name);
            AssertNear(piece.CuttingLine, cut.CuttingLine);
            Assert.Equal(piece.FoldEdge, cut.FoldEdge);
        }
    }

    [Fact]
    public void The_DXF_is_plain_ASCII_with_one_block_a_piece_and_size()
    {
        Job job = Jobs.Good(JobReader.Read(Fixtures.PathOf("harbour-smock/job.yaml"), new DiskFiles()));
        byte[] file = PiecesDxf.Write(job);
        Assert.True(Ascii.IsValid(file));
        Assert.Equal(file, PiecesDxf.Write(job));
        string text = Encoding.ASCII.GetString(file);
        Assert.Equal(job.Pieces.Length, text.Split("\r\nBLOCK\r\n").Length - 1);
        Assert.Equal(job.Pieces.Length, text.Split("\r\nINSERT\r\n").Length - 1);
        Assert.Contains(JobOrigin.Of(job), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_and_labels_cannot_break_out_of_their_text()
    {
        Piece piece = TestPieces.Rectangle("Stehkragen \u00e4", 300, 40, "1");
        Piece labelled = piece with { Marks = [new PieceMark("a\r\n  0\r\nEOF", Point.FromMillimeters(5, 5))] };
        Job job = Cli.CliRun.JobOf(TestCloths.Open, labelled);
        (Nestmark.Input.Dxf.DxfDrawing? drawing, IReadOnlyList<Problem> problems) = Input.Dxf.Drawings.Load(PiecesDxf.Write(job));
        Assert.Empty(problems);
        Assert.Equal(["Stehkragen \u00e4"], drawing!.Names);
        Assert.Equal("a    0  EOF", Assert.Single(Input.Dxf.Drawings.Piece(PiecesDxf.Write(job), "Stehkragen \u00e4").Marks).Label);
        Assert.Contains("id=\"Stehkragen__\"", Encoding.UTF8.GetString(PiecesSvg.Write(job)), StringComparison.Ordinal);
    }

    private static string Address(Piece piece) => (piece.Size.Length == 0 ? piece.Name : piece.Name + "-" + piece.Size).Replace(' ', '_');

    private static bool HasAllowance(Piece piece) => !piece.CuttingLine.Outer.SequenceEqual(piece.SeamLine.Outer);

    private static Piece ReadBack(Piece piece, byte[] file, string format, string line, string name)
    {
        string address = format == "dxf" ? name : name.EndsWith("-cut", StringComparison.Ordinal) ? name : Address(piece);
        string sizes = piece.Size.Length == 0 ? "" : $"sizes: {{ \"{piece.Size}\": 1 }}\n";
        string yaml = Jobs.Head + $"pieces: {{ \"{piece.Name}\": {{ outline: \"p.{format}#{address}\", cut: {piece.Cut}, line: {line}, seam: 0, grain: {piece.Grain.ToString().ToLowerInvariant()} }} }}\n{sizes}cloths: {{ shell: {{ width: 500 }} }}\n";
        return Jobs.Good(JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", yaml).With("p." + format, file))).Pieces[0].Piece;
    }

    private static void AssertSame(Piece wanted, Piece found, Polygon seamLine)
    {
        AssertNear(seamLine, found.SeamLine);
        Assert.Equal(wanted.FoldEdge is null, found.FoldEdge is null);
        Assert.Equal(wanted.Grainline.End - wanted.Grainline.Start, found.Grainline.End - found.Grainline.Start);
        // Letters begin at the lowest-left corner as drawn, so they may begin elsewhere in a drawing that lies along the grain.
        Assert.Equal(wanted.Corners.Select(corner => corner.Place - seamLine.Outer.Min()).Order(), found.Corners.Select(corner => corner.Place - found.SeamLine.Outer.Min()).Order());
        Assert.Equal(wanted.Edges.Select(edge => edge.Kind).Order(), found.Edges.Select(edge => edge.Kind).Order());
        Assert.All(
            wanted.Edges.Select(edge => edge.SeamLineLength.TotalMillimeters).Order().Zip(found.Edges.Select(edge => edge.SeamLineLength.TotalMillimeters).Order()),
            pair => Assert.Equal(pair.First, pair.Second, 0.02));
        Assert.Equal(wanted.Lines.Select(line => (line.Label, line.Points.Length)), found.Lines.Select(line => (line.Label, line.Points.Length)));
        Assert.Equal(wanted.Marks.Select(mark => (mark.Label, mark.Place - seamLine.Outer.Min())), found.Marks.Select(mark => (mark.Label, mark.Place - found.SeamLine.Outer.Min())));
        Assert.Equal(wanted.Notches.Select(notch => notch.Name), found.Notches.Select(notch => notch.Name));
        Assert.All(wanted.Notches.Zip(found.Notches), pair => Assert.InRange(
            (pair.First.OnSeamLine - seamLine.Outer.Min() - (pair.Second.OnSeamLine - found.SeamLine.Outer.Min())).NormMicrometers, 0, 21));
    }

    /// <summary>The same ring within 20 micrometers: reading drops vertices that lie so near the line between their neighbors.</summary>
    private static void AssertNear(Polygon wanted, Polygon found)
    {
        Assert.All(Normal(wanted), point => Assert.InRange(Distance(Normal(found), point), 0, 21));
        Assert.All(Normal(found), point => Assert.InRange(Distance(Normal(wanted), point), 0, 21));
    }

    private static double Distance(List<Point> ring, Point point) =>
        Enumerable.Range(0, ring.Count).Min(i => (PointLocation.NearestOnSegment(ring[i], ring[(i + 1) % ring.Count], point) - point).NormMicrometers);

    private static List<Point> Normal(Polygon polygon)
    {
        Point least = polygon.Outer.Min();
        int first = polygon.Outer.IndexOf(least);
        return [.. Enumerable.Range(0, polygon.Outer.Length).Select(i => polygon.Outer[(first + i) % polygon.Outer.Length] - least)];
    }
}
