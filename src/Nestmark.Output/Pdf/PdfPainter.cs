using System.Collections.Immutable;
using Nestmark.Geometry;
using Nestmark.Output.Drawings;
using Nestmark.Output.Fonts;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Nestmark.Output.Pdf;

/// <summary>Paints a picture on a page. The library counts y downward from the top of the page; this is the one place that turns it.</summary>
internal sealed class PdfPainter(XGraphics graphics, double heightMillimeters)
{
    private const double Unit = PdfFile.UnitsPerMillimeter;

    private Spot _moved;

    /// <summary>Paints all figures.</summary>
    public void Paint(Drawing drawing)
    {
        foreach (Figure figure in drawing.Figures)
            Paint(figure, seen: null);
    }

    private void Paint(Figure figure, Area? seen)
    {
        if (seen is Area area && !figure.Bounds.Grown(2).Touches(area))
            return;
        switch (figure)
        {
            case PathFigure path:
                PaintPath(path);
                break;
            case TextFigure text:
                PaintText(text);
                break;
            case GroupFigure group:
                foreach (Figure inner in group.Inner.Figures)
                    Paint(inner, seen);
                break;
            case WindowFigure window:
                PaintWindow(window);
                break;
        }
    }

    private void PaintWindow(WindowFigure window)
    {
        Spot outside = _moved;
        XGraphicsState state = graphics.Save();
        XPoint topLeft = At(window.Place.Moved(0, window.Seen.HeightMillimeters));
        graphics.IntersectClip(new XRect(topLeft.X, topLeft.Y, window.Seen.WidthMillimeters * Unit, window.Seen.HeightMillimeters * Unit));
        // Coordinates are moved here, not by a matrix, so that none is rounded twice.
        _moved = outside.Moved(
            window.Place.XMillimeters - window.Seen.LeftMillimeters, window.Place.YMillimeters - window.Seen.BottomMillimeters);
        foreach (Figure figure in window.Inner.Figures)
            Paint(figure, window.Seen);
        _moved = outside;
        graphics.Restore(state);
    }

    private void PaintPath(PathFigure figure)
    {
        if (figure.Ends == PathEnds.Open)
        {
            // One by one: in a path the library would join the end of a line to the start of the next.
            foreach (ImmutableArray<Spot> run in figure.Runs)
                graphics.DrawLines(PenOf(figure.Line!), [.. run.Select(At)]);
            return;
        }
        XGraphicsPath path = new() { FillMode = XFillMode.Alternate };
        foreach (ImmutableArray<Spot> run in figure.Runs)
            path.AddPolygon([.. run.Select(At)]);
        XBrush? brush = figure.FillGrayRatio is double gray ? new XSolidBrush(Gray(gray)) : null;
        if (figure.Line is null)
            graphics.DrawPath(brush!, path);
        else if (brush is null)
            graphics.DrawPath(PenOf(figure.Line), path);
        else
            graphics.DrawPath(PenOf(figure.Line), brush, path);
    }

    private void PaintText(TextFigure figure)
    {
        string text = PrintFont.Of(figure.Weight).Printable(figure.Text);
        if (text.Length == 0)
            return;
        double shift = figure.Anchor switch
        {
            Anchor.Middle => -figure.WidthMillimeters / 2,
            Anchor.End => -figure.WidthMillimeters,
            _ => 0,
        };
        XPoint at = At(figure.At);
        XGraphicsState? state = null;
        if (figure.Turn != Angle.Zero)
        {
            state = graphics.Save();
            graphics.RotateAtTransform(-figure.Turn.SignedDegrees, at);
        }
        graphics.DrawString(
            text, FontOf(figure), new XSolidBrush(Gray(figure.GrayRatio)), at.X + shift * Unit, at.Y, XStringFormats.BaseLineLeft);
        if (state is not null)
            graphics.Restore(state);
    }

    private static XFont FontOf(TextFigure figure) => new(
        PrintFont.Family, figure.SizeMillimeters * Unit,
        figure.Weight == FontWeight.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular,
        new XPdfFontOptions(PdfFontEncoding.Unicode));

    private static XPen PenOf(Ink ink)
    {
        XPen pen = new(Gray(ink.GrayRatio), ink.WidthMillimeters * Unit)
        {
            LineJoin = XLineJoin.Miter,
            LineCap = XLineCap.Flat,
        };
        // The library multiplies dashes by the width of the pen.
        if (ink.DashesMillimeters is { Length: > 0 } dashes)
            pen.DashPattern = [.. dashes.Select(dash => dash / ink.WidthMillimeters)];
        return pen;
    }

    private static XColor Gray(double ratio) => XColor.FromGrayScale(ratio);

    private XPoint At(Spot spot) => new(
        (spot.XMillimeters + _moved.XMillimeters) * Unit,
        (heightMillimeters - spot.YMillimeters - _moved.YMillimeters) * Unit);
}
