using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Tests.Output;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>Our own full-size marker, printed on pages, is a tiled pattern like any other: its pages find each other by the lines that several of them draw.</summary>
public sealed class OwnMarkerTests
{
    // The true sizes are those of the pieces that were printed; one page ends where the next begins, so a wrong overlap would show in the lengths.
    [Theory]
    [InlineData("a4", "folded", 5)]
    [InlineData("a4", "open", 4)]
    public void Pages_of_our_own_marker_are_joined_and_its_cutting_lines_are_as_large_as_they_were(string paper, string planName, int free)
    {
        Plan plan = planName == "folded" ? PlanBuilder.Folded() : PlanBuilder.Open();
        byte[] marker = MarkerPdf.Write(plan, Paper.Read(paper).Paper!);
        DrawingReading reading = DrawingListing.Read("marker.pdf", new MemoryFiles().With("marker.pdf", marker));
        Assert.Single(reading.Problems, problem => problem.What.StartsWith("The pages were joined as [[2, ", StringComparison.Ordinal) && problem.What.EndsWith("with an overlap of 10 and 10 mm.", StringComparison.Ordinal));
        List<ListedPiece> found = [.. reading.Pieces];
        // A half piece on the fold has no line along the fold, and so no closed outline.
        Placement[] whole = [.. plan.Cloths[0].Marker.Placements.Where(placement => placement.Contact == FoldContact.Free)];
        Assert.Equal(free, whole.Length);
        foreach (Placement placement in whole)
        {
            Box box = placement.CuttingLine.Bounds;
            int index = found.FindIndex(piece => Math.Abs(piece.Width.Micrometers - box.Width) <= 100 && Math.Abs(piece.Height.Micrometers - box.Height) <= 100);
            Assert.True(index >= 0, $"{placement.Piece.Name} {box.Width} x {box.Height} not among {string.Join(", ", found.Select(piece => $"{piece.Name} {piece.Width.Micrometers} x {piece.Height.Micrometers}"))}");
            found.RemoveAt(index);
        }
    }

    [Fact]
    public void Joined_pieces_of_our_own_marker_are_called_by_the_names_printed_on_them()
    {
        byte[] marker = MarkerPdf.Write(PlanBuilder.Folded(), Paper.A4);
        const string Yaml = Jobs.Head + "pieces: { sleeve: { outline: 'marker.pdf#sleeve M', line: cut, cut: 1 pair } }\ncloths: { c: { width: 140 } }\n";
        Job job = Jobs.Good(JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", Yaml).With("marker.pdf", marker)));
        Polygon printed = PlanBuilder.Folded().Cloths[0].Marker.Placements.Single(placement => placement.Piece.Name == "sleeve").Piece.CuttingLine;
        Polygon read = Assert.Single(job.Pieces).Piece.CuttingLine;
        Assert.Equal(printed.AreaSquareMillimeters, read.AreaSquareMillimeters, 60.0);
        Assert.Equal(printed.Bounds.Width / 1000.0, read.Bounds.Width / 1000.0, 0.1);
    }
}
