using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>Letters at the corners inside the seam line, names and lengths along the edges outside the cutting line, names of notches.</summary>
internal static class EdgeNames
{
    private const double LetterSize = 2.8;
    private const double EdgeSize = 2.3;
    private const double NotchSize = 1.9;
    private const double MostAway = 8;

    /// <summary>Draws them. An edge shorter than its words has them in the table only.</summary>
    public static void Draw(Drawing page, Frame frame, Piece piece, MeasureSystem system)
    {
        (Spot, Spot)[] cutting = [.. frame.Of(piece.CuttingLine).SelectMany(EdgesOf)];
        (Spot, Spot)[] seam = [.. frame.Of(piece.SeamLine).SelectMany(EdgesOf)];
        (Spot, Spot)[] drawn = [.. seam, .. page.Figures.OfType<PathFigure>().Where(IsInTheWay).SelectMany(path => path.Runs).SelectMany(run => run.Zip(run.Skip(1)))];
        foreach (EdgeRun run in EdgeRun.AllOf(piece))
            DrawEdge(page, frame, seam, cutting, run, system);
        foreach (PieceCorner corner in piece.Corners)
            DrawLetter(page, frame.Of(corner.Place), seam, drawn, corner.Letter);
        for (int i = 0; i < piece.Notches.Length; i++)
            DrawNotch(page, frame.Of(piece.Notches[i].OnSeamLine), seam, drawn, PieceFacts.NotchName(piece.Notches[i], i));
    }

    private static bool IsInTheWay(PathFigure path) => path.Role is Role.FoldEdge or Role.Grainline or Role.InternalLine or Role.Mark;

    private static void DrawEdge(Drawing page, Frame frame, (Spot, Spot)[] seam, (Spot, Spot)[] cutting, EdgeRun run, MeasureSystem system)
    {
        TextLine words = new($"{run.Edge.Name}  {LengthWords.Tape(run.Edge.SeamLineLength, system)}", EdgeSize);
        if (words.WidthMillimeters > run.Edge.SeamLineLength.TotalMillimeters * frame.ScaleRatio - 3)
            return;
        (Point from, Point to) = run.Middle();
        (Spot start, Spot end) = (frame.Of(from), frame.Of(to));
        double length = start.DistanceMillimeters(end);
        Spot along = new((end.XMillimeters - start.XMillimeters) / length, (end.YMillimeters - start.YMillimeters) / length);
        Spot across = new(along.YMillimeters, -along.XMillimeters);
        Spot middle = start.Toward(end, 0.5);
        bool isOutside = !ShapeTests.IsInside(seam, middle.Moved(across.XMillimeters * 0.3, across.YMillimeters * 0.3));
        Spot outward = isOutside ? across : new Spot(-across.XMillimeters, -across.YMillimeters);
        Angle turn = Readable(along);
        double least = run.Edge.Allowance.TotalMillimeters * frame.ScaleRatio + 0.9;
        for (double away = least; away < least + MostAway; away += 0.5)
        {
            TextFigure text = new(Role.Label, words.Text, middle.Moved(outward.XMillimeters * away, outward.YMillimeters * away), EdgeSize, Anchor.Middle, FontWeight.Regular, turn, 0);
            if (!IsClear(text, words.WidthMillimeters, cutting))
                continue;
            page.Add(text);
            return;
        }
    }

    /// <summary>Whether words lie outside the cutting line and a little away from it, at nine places below and above.</summary>
    private static bool IsClear(TextFigure text, double width, (Spot Start, Spot End)[] cutting)
    {
        (double cosine, double sine) = (text.Turn.CosineRatio, text.Turn.SineRatio);
        foreach (double height in (double[])[0, EdgeSize * 0.75])
        {
            for (int i = -4; i <= 4; i++)
            {
                double along = width / 2 * i / 4;
                Spot spot = text.At.Moved(along * cosine - height * sine, along * sine + height * cosine);
                if (ShapeTests.IsInside(cutting, spot) || cutting.Min(edge => ShapeTests.DistanceMillimeters(edge.Start, edge.End, spot)) < 0.6)
                    return false;
            }
        }
        return true;
    }

    /// <summary>The direction of a line as a turn from -90 to 90 degrees, so that words along it are never upside down.</summary>
    private static Angle Readable(Spot along)
    {
        (double x, double y) = (along.XMillimeters, along.YMillimeters);
        if (x < -1e-9 || (Math.Abs(x) <= 1e-9 && y < 0))
            (x, y) = (-x, -y);
        return Angle.FromDegrees(Angle.OfDirection(x, y).SignedDegrees);
    }

    private static void DrawLetter(Drawing page, Spot corner, (Spot, Spot)[] seam, (Spot, Spot)[] drawn, string letter)
    {
        double radius = Math.Max(LetterSize * 0.75, new TextLine(letter, LetterSize, FontWeight.Bold).WidthMillimeters * 0.6);
        Spot center = DeepestAround(corner, seam, drawn, radius + 1.2, radius + 0.3);
        page.Text(Role.Label, letter, center.Moved(0, -LetterSize * 0.36), LetterSize, Anchor.Middle, FontWeight.Bold);
    }

    // Of 24 places around the corner, the one inside that lies farthest from every line; the corner itself where none lies inside.
    // Where all of them are too near to a line, as beside the bracket of a fold, places farther away are tried.
    private static Spot DeepestAround(Spot corner, (Spot Start, Spot End)[] seam, (Spot Start, Spot End)[] drawn, double radius, double wanted)
    {
        const int Around = 24;
        const int MostRounds = 4;
        Spot best = corner;
        double deepest = 0;
        for (int i = 0; i < Around * MostRounds && !(i > 0 && i % Around == 0 && deepest >= wanted); i++)
        {
            Angle angle = Angle.FromDegrees(15 * (i % Around));
            double away = radius * (1 + i / Around * 0.4);
            Spot spot = corner.Moved(angle.CosineRatio * away, angle.SineRatio * away);
            double depth = ShapeTests.IsInside(seam, spot) ? drawn.Min(edge => ShapeTests.DistanceMillimeters(edge.Start, edge.End, spot)) : 0;
            if (depth > deepest + 0.01)
                (best, deepest) = (spot, depth);
        }
        return best;
    }

    private static void DrawNotch(Drawing page, Spot notch, (Spot, Spot)[] seam, (Spot, Spot)[] drawn, string name)
    {
        Spot at = DeepestAround(notch, seam, drawn, 2.2, 0);
        double x = at.XMillimeters - notch.XMillimeters;
        Anchor anchor = x > 1 ? Anchor.Start : x < -1 ? Anchor.End : Anchor.Middle;
        double drop = anchor == Anchor.Middle && at.YMillimeters < notch.YMillimeters ? NotchSize : NotchSize * 0.36;
        page.Text(Role.Notch, FittedText.Cut(name, NotchSize, FontWeight.Regular, 25), at.Moved(0, -drop), NotchSize, anchor);
    }

    private static IEnumerable<(Spot, Spot)> EdgesOf(System.Collections.Immutable.ImmutableArray<Spot> ring) =>
        ring.Select((spot, i) => (spot, ring[(i + 1) % ring.Length]));
}
