using System.Globalization;
using Nestmark.Geometry;
using Nestmark.Pieces;
using Nestmark.Yardage;

namespace Nestmark.Output.PieceSheets;

/// <summary>What is known of a piece, in sentences.</summary>
internal sealed class PieceFacts(JobPiece jobPiece, MeasureSystem system)
{
    private static readonly Length OnEdge = Length.FromMillimeters(3.1);

    private readonly Piece _piece = jobPiece.Piece;

    /// <summary>Size, area, grain, fold and cloth.</summary>
    public IEnumerable<string> Measures()
    {
        Box box = _piece.CuttingLine.Bounds;
        yield return $"Cutting line: {Tape(box.Width)} along the grain, {Tape(box.Height)} across.";
        Box seam = _piece.SeamLine.Bounds;
        if (seam != box)
            yield return $"Seam line: {Tape(seam.Width)} along the grain, {Tape(seam.Height)} across; {Tape(Around(_piece.SeamLine))} around.";
        string drawn = _piece.FoldEdge is null ? "" : ", of the half as drawn";
        yield return $"Area inside the cutting line: {AreaWords.Of(_piece.CuttingLine.AreaSquareMillimeters, system)}{drawn}.";
        yield return $"Grainline: {Tape((_piece.Grainline.End - _piece.Grainline.Start).NormMicrometers)} long; {GrainOf(_piece.Grain)}{TiltOf(_piece.Tilt)}.";
        if (_piece.FoldEdge is Segment fold)
            yield return $"Fold edge: {Tape((fold.End - fold.Start).NormMicrometers)} long, to be laid on the fold and not cut.";
        yield return $"Cut from: {jobPiece.Cloth}. Described in {Path.GetFileName(jobPiece.Where.File)}, line {jobPiece.Where.Line.ToString(CultureInfo.InvariantCulture)}.";
    }

    /// <summary>Each alteration, what it asked for and what it did to the area.</summary>
    public IEnumerable<string> Changes() => jobPiece.Changes.Select(change =>
        $"{change.What} Area inside the seam line: {AreaWords.Of(change.AreaBeforeSquareMillimeters, system)} before, {AreaWords.Of(change.AreaAfterSquareMillimeters, system)} after.");

    /// <summary>Each notch by its place along an edge.</summary>
    public IEnumerable<string> Notches() => _piece.Notches.Select((notch, i) => $"{NotchName(notch, i)}: {AlongEdge(notch.OnSeamLine)}.");

    /// <summary>Each internal line and its length.</summary>
    public IEnumerable<string> Lines() => _piece.Lines.Select((line, i) =>
        $"{Named(line.Label, i)}: {Tape(line.Points.Zip(line.Points.Skip(1)).Sum(step => (step.Second - step.First).NormMicrometers))} long.");

    /// <summary>Each mark and where it is.</summary>
    public IEnumerable<string> Marks() => _piece.Marks.Select((mark, i) =>
        $"{Named(mark.Label, i)}: {Tape(mark.Place.X - _piece.CuttingLine.Bounds.MinX)} along and {Tape(mark.Place.Y - _piece.CuttingLine.Bounds.MinY)} across from the lowest left of the cutting line.");

    /// <summary>A notch's name, or its number where it has none.</summary>
    public static string NotchName(Notch notch, int index) => Named(notch.Name, index);

    private static string Named(string name, int index) => name.Length > 0 ? name : "no. " + (index + 1).ToString(CultureInfo.InvariantCulture);

    private string AlongEdge(Point place)
    {
        EdgeRun? nearest = EdgeRun.AllOf(_piece).MinBy(run => run.Reach(place).Away.Micrometers);
        if (nearest is null || nearest.Reach(place).Away > OnEdge)
            return "on the outline";
        return $"on {nearest.Edge.Name}, {LengthWords.Tape(nearest.Reach(place).Along, system)} from {nearest.Edge.From}";
    }

    private static string GrainOf(GrainRule rule) => rule switch
    {
        GrainRule.Across => "it lies across the cloth",
        GrainRule.Bias => "it lies on the bias, at 45 degrees to the selvage",
        GrainRule.Any => "it may lie along the selvage or across",
        _ => "it lies along the selvage",
    };

    private static string TiltOf(Angle? tilt) => tilt is Angle angle && angle != Angle.Zero
        ? string.Create(CultureInfo.InvariantCulture, $", tilted by at most {angle.SignedDegrees:0.#}°")
        : "";

    private static double Around(Polygon polygon) => polygon.PerimeterMillimeters * 1000;

    private string Tape(double micrometers) => LengthWords.Tape(Length.FromMillimeters(micrometers / 1000), system);
}
