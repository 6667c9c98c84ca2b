using System.Globalization;
using System.Xml.Linq;
using Nestmark.Nesting;
using Nestmark.Output;
using Nestmark.Yardage;
using Point = Nestmark.Geometry.Point;

namespace Nestmark.Tests.Output;

public sealed class MarkerSvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // SVG 2, 8.2: with width and height in mm and the same numbers in the viewBox, one user unit is one millimeter.
    [Fact]
    public void One_user_unit_is_one_millimeter()
    {
        XElement root = Read(PlanBuilder.TwoCloths());
        string[] box = root.Attribute("viewBox")!.Value.Split(' ');
        Assert.Equal(["0", "0"], box[..2]);
        Assert.Equal(box[2] + "mm", root.Attribute("width")!.Value);
        Assert.Equal(box[3] + "mm", root.Attribute("height")!.Value);
    }

    // Around the cloth: 10 mm of air. The cloth: lay length and two ends of 20 mm.
    [Fact]
    public void The_picture_is_as_long_as_the_cloth()
    {
        Plan plan = PlanBuilder.Folded();
        double length = plan.Cloths[0].Marker.LayLength.TotalMillimeters + 2 * 20 + 2 * 10;
        Assert.Equal(length.ToString("0.###", CultureInfo.InvariantCulture) + "mm", Read(plan).Attribute("width")!.Value);
    }

    [Fact]
    public void Free_placements_are_polygons_with_the_placements_points()
    {
        Plan plan = PlanBuilder.Open();
        XElement[] groups = GroupsOf(Read(plan), 1);
        double top = plan.Cloths[0].Marker.Surface.Depth.TotalMillimeters + 10 + (2 * 14 + 10);
        Assert.Equal(plan.Cloths[0].Marker.Placements.Length, groups.Length);
        foreach ((Placement placement, XElement group) in plan.Cloths[0].Marker.Placements.Zip(groups))
        {
            XElement polygon = group.Elements(Svg + "polygon").Single(one => one.Attribute("class")!.Value == "cutting-line");
            Assert.Equal(Flat(placement.CuttingLine.Outer), PointsOf(polygon).Select(at => (Math.Round(at.X - 10 - 20, 3), Math.Round(top - at.Y, 3))));
        }
    }

    [Fact]
    public void Placements_on_the_fold_are_lines_that_leave_the_fold_out()
    {
        Plan plan = PlanBuilder.Folded();
        Placement front = plan.Cloths[0].Marker.Placements[0];
        XElement line = GroupsOf(Read(plan), 1)[0].Elements(Svg + "polyline").Single(one => one.Attribute("class")!.Value == "cutting-line");
        double bottom = PointsOf(line).Max(at => at.Y);
        (double, double)[] points = [.. PointsOf(line).Select(at => (Math.Round(at.X - 30, 3), Math.Round(bottom - at.Y, 3)))];
        Assert.Equal(Flat(front.CuttingLine.Outer).Order(), points.Order());
        Assert.Equal([0, 0], new[] { points[0].Item2, points[^1].Item2 });
    }

    [Fact]
    public void Every_placement_has_a_title_and_a_description()
    {
        XElement[] groups = GroupsOf(Read(PlanBuilder.TwoCloths()), 2);
        Assert.Equal(["front M", "sleeve M", "sleeve M", "bias band"], groups.Select(group => group.Element(Svg + "title")!.Value));
        Assert.Equal("cut 1 pair · copy 2 of 2 · 1 layer · wrong side up", groups[2].Element(Svg + "desc")!.Value);
    }

    [Fact]
    public void Signs_of_XML_in_names_are_escaped()
    {
        Plan plan = PlanBuilder.Folded(title: "A & B <script>alert(\"1\")</script> \u0001\ud800 end");
        XElement root = Read(plan);
        Assert.StartsWith("A & B <script>alert(\"1\")</script>", root.Element(Svg + "title")!.Value, StringComparison.Ordinal);
        Assert.Empty(root.Descendants(Svg + "script"));
    }

    [Fact]
    public void Ids_are_unique()
    {
        string[] ids = [.. Read(PlanBuilder.TwoCloths()).DescendantsAndSelf().Attributes("id").Select(id => id.Value)];
        Assert.Equal(ids.Distinct().Count(), ids.Length);
    }

    [Fact]
    public void An_empty_marker_is_still_a_picture() => Assert.Empty(GroupsOf(Read(PlanBuilder.Nothing()), 1));

    private static XElement Read(Plan plan)
    {
        using MemoryStream file = new(MarkerSvg.Write(plan));
        return XDocument.Load(file).Root!;
    }

    private static XElement[] GroupsOf(XElement root, int cloth) => [.. root.Descendants(Svg + "g")
        .Where(group => group.Attribute("id")!.Value.StartsWith(FormattableString.Invariant($"cloth{cloth}-piece"), StringComparison.Ordinal))];

    private static IEnumerable<(double X, double Y)> PointsOf(XElement shape) => shape.Attribute("points")!.Value.Split(' ')
        .Select(pair => pair.Split(','))
        .Select(pair => (double.Parse(pair[0], CultureInfo.InvariantCulture), double.Parse(pair[1], CultureInfo.InvariantCulture)));

    private static IEnumerable<(double, double)> Flat(IEnumerable<Point> points) => points.Select(point => (point.XMillimeters, point.YMillimeters));
}
