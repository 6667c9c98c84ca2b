using Nestmark.Input;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

/// <summary>A piece that is cut from several cloths.</summary>
public sealed class SeveralClothsTests
{
    private const string Cloths = "cloths: { shell: { width: 140 }, lining: { width: 150 }, fuse: { width: 20 in, lay: open } }\n";

    [Fact]
    public void It_stands_once_for_each_cloth_with_its_own_count_and_allowance()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { collar: { rectangle: 40 x 10, seam: 1, cloths: { shell: 2, fuse: { cut: 1, seam: 0 } } } }\n" + Cloths);
        Assert.Equal(
            ["collar of shell: 2, 420 x 120 mm, pieces.collar.cloths.shell", "collar of fuse: 1, 400 x 100 mm, pieces.collar.cloths.fuse"],
            job.Pieces.Select(Described));
    }

    [Fact]
    public void What_a_cloth_leaves_out_is_as_the_piece_says()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { band: { rectangle: 40 x 10, cut: 1 pair, seam: 2, edges: { A-B: 4 }, grain: across, cloths: { shell: {}, lining: { cut: 3 } } } }\n" + Cloths);
        Assert.Equal(
            ["band of shell: 1 pair, 440 x 160 mm, pieces.band.cloths.shell", "band of lining: 3, 440 x 160 mm, pieces.band.cloths.lining"],
            job.Pieces.Select(Described));
        Assert.All(job.Pieces, piece => Assert.Equal(Nestmark.Pieces.GrainRule.Across, piece.Piece.Grain));
    }

    [Fact]
    public void An_allowance_of_a_cloth_replaces_those_of_the_edges_too_and_its_edges_come_on_top()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { band: { rectangle: 40 x 10, cut: 1, seam: 2, edges: { A-B: 4 }, cloths: { lining: { seam: 0 }, fuse: { seam: 0, edges: { A-B: 1 }, grain: any, tilt: 3 deg } } } }\n" + Cloths);
        Assert.Equal(
            ["band of lining: 1, 400 x 100 mm, pieces.band.cloths.lining", "band of fuse: 1, 400 x 110 mm, pieces.band.cloths.fuse"],
            job.Pieces.Select(Described));
        Assert.Equal(Nestmark.Pieces.GrainRule.Any, job.Pieces[1].Piece.Grain);
        Assert.Equal(3, job.Pieces[1].Piece.Tilt!.Value.TotalDegrees);
    }

    [Fact]
    public void A_rectangle_may_be_a_half_for_one_cloth_and_a_whole_for_another()
    {
        Job job = Jobs.Good(Jobs.Head + "pieces: { yoke: { rectangle: 40 x 10, seam: 0, cloths: { shell: 1 on fold, fuse: 2 } } }\n" + Cloths);
        Assert.NotNull(job.Pieces[0].Piece.FoldEdge);
        Assert.Null(job.Pieces[1].Piece.FoldEdge);
    }

    [Theory]
    [InlineData("cloth: shell, cut: 2, cloths: { lining: 2 }", "cloth and cloths")]
    [InlineData("cut: 2, cloths: {}", "names no cloth")]
    [InlineData("cut: 2, cloths: { linnig: 2 }", "There is no cloth \"linnig\" in this job. Did you mean lining?")]
    [InlineData("cloths: { shell: 2, lining: { seam: 0 } }", "The key cut is missing")]
    [InlineData("cut: 2, cloths: { shell: [2] }", "what is cut from this cloth")]
    [InlineData("cut: 2, cloths: { shell: { cutt: 2 } }", "Did you mean cut?")]
    [InlineData("cut: 2, line: cut, cloths: { shell: { seam: 0 } }", "The outline is the cutting line")]
    public void What_cannot_be_meant_is_told_with_a_remedy(string keys, string told)
    {
        JobReading reading = Jobs.Read(Jobs.Head + $"pieces: {{ p: {{ rectangle: 40 x 10, {keys} }} }}\n" + Cloths);
        Problem problem = Assert.Single(reading.Problems, problem => problem.Severity == Severity.Error);
        Assert.Contains(told, problem.ToString(), StringComparison.Ordinal);
        Assert.NotEqual("", problem.Hint);
    }

    [Fact]
    public void A_fault_in_an_allowance_of_a_cloth_points_at_it()
    {
        JobReading reading = Jobs.Read(Jobs.Head + "pieces:\n  p:\n    rectangle: 40 x 10\n    cut: 1\n    cloths:\n      shell: {}\n      fuse: { edges: { A-Z: 1 } }\n" + Cloths);
        Problem problem = Jobs.OnlyProblem(reading);
        Assert.Equal((10, "pieces.p.cloths.fuse.edges"), (problem.Where.Line, problem.Where.Item));
    }

    [Fact]
    public void A_piece_that_is_too_wide_for_its_interfacing_is_refused_there_and_nowhere_else()
    {
        Job job = Jobs.Good(JobReader.Read(Fixtures.PathOf("several-cloths/too-wide.yaml"), new DiskFiles()));
        Problem refusal = Assert.Single(Planner.Check(job), problem => problem.Severity == Severity.Error);
        Assert.Equal("pieces.panel.cloths.interfacing", refusal.Where.Item);
        Assert.Equal("panel is 22\" deep, the cloth only 20\"; it fits on cloth at least 22\" wide (usual: 36\").", refusal.What);
    }

    private static string Described(JobPiece piece)
    {
        Nestmark.Geometry.Box box = piece.Piece.CuttingLine.Bounds;
        return FormattableString.Invariant($"{piece.Piece.Name} of {piece.Cloth}: {piece.Piece.Cut}, {box.Width / 1000} x {box.Height / 1000} mm, {piece.Where.Item}");
    }
}
