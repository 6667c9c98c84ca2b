using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Input;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Tests.Input;

public sealed class JobReaderTests
{
    private const string Pocket = "pieces: { pocket: { rectangle: 16 x 18, cut: 1 pair } }\n";

    [Fact]
    public void Cloth_without_more_than_a_width_gets_the_defaults_of_the_trade()
    {
        // references/trade.md 13: seam 15 mm, selvage 10-15 mm each side, ends 25 mm, step 10 cm. One-way: right on any cloth.
        Job job = Jobs.Good(Jobs.Head + Pocket + "cloths: { shell: { width: 140 } }");
        Cloth cloth = job.Cloths[0];
        Assert.Equal((LayForm.Folded, Nap.OneWay), (cloth.Lay, cloth.Nap));
        Assert.Equal((Length.FromCentimeters(1), Length.FromCentimeters(2.5), Length.Zero), (cloth.Selvage, cloth.Ends, cloth.Gap));
        Assert.Equal(new BuyingRule(Length.FromCentimeters(10), null), cloth.Buying);
        Assert.Equal(Length.FromCentimeters(1.5), job.Pieces[0].Piece.Edges[0].Allowance);
        Assert.Equal(new SizeCount("", 1), Assert.Single(job.Sizes));
    }

    [Fact]
    public void Inch_files_get_defaults_in_inches()
    {
        // references/trade.md 13: 5/8 in, 1/8 yd, 1 in at each cut end.
        Job job = Jobs.Good("nestmark: 1\ntitle: Test\nunits: in\n" + Pocket + "cloths: { shell: { width: 45 } }");
        Cloth cloth = job.Cloths[0];
        Assert.Equal(MeasureSystem.Imperial, job.System);
        Assert.Equal((Length.FromInches(45), Length.FromInches(0.5), Length.FromInches(1)), (cloth.Width, cloth.Selvage, cloth.Ends));
        Assert.Equal(Length.FromYards(0.125), cloth.Buying.Step);
        Assert.Equal(Length.FromInches(0.625), job.Pieces[0].Piece.Edges[0].Allowance);
        Assert.Equal(Length.FromInches(16).Micrometers, job.Pieces[0].Piece.SeamLine.Bounds.Width);
    }

    [Fact]
    public void Every_key_of_a_cloth_is_read()
    {
        Cloth cloth = Jobs.Good(Jobs.Head + Pocket
            + "cloths: { shell: { width: 150 cm, selvage: 12 mm, lay: open, nap: by size, shrinkage: 3 %, ends: 2, gap: 0.2, tilt: 1 deg, buy: { step: 1/2 m, price: €9 per m } } }").Cloths[0];
        Assert.Equal((LayForm.Open, Nap.BySize, 0.03, 0.03), (cloth.Lay, cloth.Nap, cloth.LengthShrinkageRatio, cloth.WidthShrinkageRatio));
        Assert.Equal((Length.FromMillimeters(12), Length.FromCentimeters(2), Length.FromMillimeters(2)), (cloth.Selvage, cloth.Ends, cloth.Gap));
        Assert.Equal((Angle.FromDegrees(1), Length.FromCentimeters(50)), (cloth.Tilt, cloth.Buying.Step));
        Assert.Equal(new ClothPrice(9, Length.FromMeters(1), "€"), cloth.Buying.Price);
    }

    [Fact]
    public void Every_key_of_a_piece_is_read()
    {
        JobPiece piece = Assert.Single(Jobs.Good(Jobs.Head
            + "pieces:\n  flap: { rectangle: 16 x 6, cut: 2 pairs, seam: 1, edges: { A-B: 3, 'B-C': { width: 2, ends: squared } }, ends: reflected, grain: across, tilt: 2 deg, cloth: lining, point_limit: 3 }\n"
            + "cloths: { shell: { width: 140 }, lining: { width: 150 } }").Pieces);
        Assert.Equal(("lining", new Place("job.yaml", 5, 3, "pieces.flap")), (piece.Cloth, piece.Where));
        Assert.Equal((new CutQuantity(2, CutKind.Pairs), GrainRule.Across, Angle.FromDegrees(2)), (piece.Piece.Cut, piece.Piece.Grain, piece.Piece.Tilt!.Value));
        Assert.Equal([30.0, 20, 10, 10], piece.Piece.Edges.Select(edge => edge.Allowance.TotalMillimeters));
    }

    [Fact]
    public void Rectangle_on_fold_has_its_lower_long_side_on_the_fold()
    {
        Piece piece = Jobs.Good(Jobs.Head + "pieces: { belt: { rectangle: 40 x 5, cut: 1 on fold, seam: 0 } }\ncloths: { shell: { width: 140 } }").Pieces[0].Piece;
        Assert.Equal(400_000, piece.FoldEdge!.Start.DistanceTo(piece.FoldEdge.End).Micrometers);
        Assert.Equal("A-B", piece.Edges.Single(edge => edge.Kind == EdgeKind.Fold).Name);
    }

    [Fact]
    public void Another_edge_can_be_the_fold()
    {
        Piece piece = Jobs.Good(Jobs.Head + "pieces: { belt: { rectangle: 40 x 5, cut: 1 on fold, seam: 0, fold: D-A, grain: across } }\ncloths: { shell: { width: 140 } }").Pieces[0].Piece;
        Assert.Equal(50_000, piece.FoldEdge!.Start.DistanceTo(piece.FoldEdge.End).Micrometers);
    }

    [Fact]
    public void Circle_and_polygon_have_their_sizes()
    {
        Job job = Jobs.Good(Jobs.Head + "seam: 0\npieces: { disc: { circle: 20, cut: 2 }, kite: { polygon: [[0, 0], [30 mm, 0], [3, 2]], cut: 2 } }\ncloths: { shell: { width: 140 } }");
        Assert.Equal(Math.PI * 100 * 100, job.Pieces[0].Piece.CuttingLine.AreaSquareMillimeters, 20.0);
        Assert.Equal(300, job.Pieces[1].Piece.CuttingLine.AreaSquareMillimeters, 6);
    }

    [Fact]
    public void Outlines_by_size_stand_once_a_size_and_others_once()
    {
        const string yaml = Jobs.Head + "pieces: { front: { outline: \"d.svg#front-{size}\", cut: 1 pair }, patch: { outline: d.svg#patch, cut: 1 pair } }\ncloths: { shell: { width: 140 } }\nsizes: { 38: 1, M: 2 }";
        const string svg = """
            <svg xmlns="http://www.w3.org/2000/svg" width="400mm" height="300mm" viewBox="0 0 400 300">
            <rect id="front-38" width="100" height="50"/><rect id="front-M" width="110" height="50"/><rect id="patch" width="90" height="50"/></svg>
            """;
        JobReading reading = JobReader.Read("in/job.yaml", new MemoryFiles().With("in/job.yaml", yaml).With("in/d.svg", svg));
        Job job = Jobs.Good(reading);
        Assert.Equal(["front 38", "front M", "patch"], job.Pieces.Select(piece => piece.Piece.Title));
        Assert.Equal([new SizeCount("38", 1), new SizeCount("M", 2)], job.Sizes.AsEnumerable());
        Assert.Equal(["in/job.yaml", "in/d.svg"], reading.FilesRead.AsEnumerable());
    }

    [Fact]
    public void Missing_size_in_a_drawing_points_at_the_outline()
    {
        const string yaml = Jobs.Head + "pieces: { front: { outline: \"d.svg#front-{size}\", cut: 1 pair } }\ncloths: { shell: { width: 140 } }\nsizes: { L: 1 }";
        const string svg = """<svg xmlns="http://www.w3.org/2000/svg" width="4mm" height="3mm" viewBox="0 0 4 3"><rect id="front-M" width="100" height="50"/></svg>""";
        Problem problem = Jobs.OnlyProblem(JobReader.Read("job.yaml", new MemoryFiles().With("job.yaml", yaml).With("d.svg", svg)));
        Assert.Equal("job.yaml:4:29 (pieces.front.outline)", problem.Where.ToString());
        Assert.Equal("Did you mean front-M?", problem.Hint);
    }

    [Fact]
    public void Json_is_read_as_the_subset_of_YAML_that_it_is()
    {
        Job job = Jobs.Good("""
            { "nestmark": 1, "title": "Test", "units": "cm",
              "pieces": { "pocket": { "rectangle": "16 x 18", "cut": "1 pair" } },
              "cloths": { "shell": { "width": 140, "buy": { "step": "10 cm" } } }, "sizes": { "38": 2 } }
            """);
        Assert.Equal(("Test", "38", 2), (job.Title, job.Sizes[0].Size, job.Sizes[0].Garments));
    }

    [Fact]
    public void Missing_job_file_is_a_problem_of_its_own()
    {
        Problem problem = Jobs.OnlyProblem(JobReader.Read("none.yaml", new MemoryFiles()));
        Assert.Equal(("none.yaml", "There is no file none.yaml."), (problem.Where.ToString(), problem.What));
    }

    [Fact]
    public void Folder_in_place_of_a_job_file_is_a_problem() =>
        Assert.Equal("The file cannot be opened.", Jobs.OnlyProblem(JobReader.Read(Fixtures.Folder, new DiskFiles())).What);

    [Fact]
    public void Problems_of_several_places_come_in_the_order_of_the_file()
    {
        JobReading reading = Jobs.Read("nestmark: 1\ntitle: Test\nunits: feet\nseam: 1,5\npieces: { a: { circle: 0, cut: 0 } }\ncloths: { b: { widht: 140 } }\n");
        Assert.Equal(["units", "seam", "pieces.a.circle", "pieces.a.cut", "cloths.b", "cloths.b.widht"], reading.Problems.Select(problem => problem.Where.Item));
        Assert.Equal([3, 4, 5, 5, 6, 6], reading.Problems.Select(problem => problem.Where.Line));
    }
}
