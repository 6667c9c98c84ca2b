using System.Globalization;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Output.Lays;
using Nestmark.Output.Svg;
using Nestmark.Yardage;

namespace Nestmark.Output;

/// <summary>The markers of all cloths at true size as one SVG picture, one below the other; each placement is a group with title and description.</summary>
public static class MarkerSvg
{
    private const double Around = 10;
    private const double Between = 60;
    private const double HeadingSize = 14;

    /// <summary>The file's bytes: width and height in millimeters, one user unit a millimeter, y downward as SVG wants it.</summary>
    public static byte[] Write(Plan plan)
    {
        Drawing picture = new();
        Area? whole = null;
        double top = 0;
        for (int i = 0; i < plan.Cloths.Length; i++)
        {
            ClothPlan cloth = plan.Cloths[i];
            Area area = ClothFrame.Of(cloth);
            Spot move = new(-area.LeftMillimeters, top - area.TopMillimeters);
            Drawing lay = Moved(LayOf(plan.Job, cloth, i + 1), move);
            string id = string.Create(CultureInfo.InvariantCulture, $"cloth{i + 1}");
            picture.Add(new GroupFigure(id, cloth.Cloth.Name, LayWords.Phrase(cloth.Marker.Surface, plan.Job.System), lay));
            Area moved = area.Moved(move.XMillimeters, move.YMillimeters);
            whole = (whole ?? moved).Including(moved).Including(new Area(0, top, 1, top + 2 * HeadingSize));
            top = moved.BottomMillimeters - Between;
        }
        return SvgPainter.Write(picture, (whole ?? default).Grown(Around), plan.Job.Title, JobOrigin.Of(plan.Job));
    }

    private static Drawing LayOf(Job job, ClothPlan cloth, int number)
    {
        TrueSizeLay lay = TrueSizeLay.Of(cloth, job.Title);
        Drawing picture = lay.Picture(string.Create(CultureInfo.InvariantCulture, $"cloth{number}-piece"));
        Area area = ClothFrame.Of(cloth);
        picture.Text(
            Role.Label, PieceWords.Joined(job.Title, cloth.Cloth.Name, LayWords.Phrase(cloth.Marker.Surface, job.System)),
            new Spot(area.LeftMillimeters, area.TopMillimeters + HeadingSize / 2), HeadingSize, Anchor.Start, FontWeight.Bold);
        return picture;
    }

    private static Drawing Moved(Drawing drawing, Spot by)
    {
        Drawing moved = new();
        foreach (Figure figure in drawing.Figures)
            moved.Add(Moved(figure, by));
        return moved;
    }

    private static Figure Moved(Figure figure, Spot by) => figure switch
    {
        PathFigure path => new PathFigure(
            path.Role, [.. path.Runs.Select(run => System.Collections.Immutable.ImmutableArray.CreateRange(run, spot => spot.Moved(by.XMillimeters, by.YMillimeters)))],
            path.Ends, path.Line, path.FillGrayRatio),
        TextFigure text => text with { At = text.At.Moved(by.XMillimeters, by.YMillimeters) },
        GroupFigure group => group with { Inner = Moved(group.Inner, by) },
        _ => figure,
    };
}
