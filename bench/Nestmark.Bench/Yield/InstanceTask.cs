using Nestmark.Cloths;
using Nestmark.Geometry;
using Nestmark.Nesting;
using Nestmark.Pieces;

namespace Nestmark.Bench.Yield;

/// <summary>An instance as a lay task in micrometers, and back.</summary>
/// <remarks>Scaled by a power of ten so that the strip is 1 m to 10 m wide; width and turns are not altered.</remarks>
internal sealed class InstanceTask
{
    private InstanceTask(Instance instance, double scale, LayTask task)
    {
        Instance = instance;
        Scale = scale;
        Task = task;
    }

    public Instance Instance { get; }

    /// <summary>Micrometers for one unit of the instance.</summary>
    public double Scale { get; }

    public LayTask Task { get; }

    public static InstanceTask Of(Instance instance)
    {
        double scale = Math.Pow(10, 6 - Math.Floor(Math.Log10(instance.StripWidth)));
        Length width = Length.FromMicrometers((long)Math.Round(instance.StripWidth * scale));
        List<Demand> demands = [];
        foreach (InstancePiece piece in instance.Pieces)
        {
            Piece made = ToPiece(piece, scale);
            for (int copy = 1; copy <= piece.Quantity; copy++)
            {
                demands.Add(new Demand(made, "", copy, 1, FoldContact.Free,
                    [.. piece.Rotations.Distinct().Select(rotation => Turn.By(Angle.FromDegrees(rotation)))], ""));
            }
        }
        LaySurface surface = LaySurface.Open(width);
        return new InstanceTask(instance, scale, new LayTask(surface, Length.Zero, [.. demands], []));
    }

    private static Piece ToPiece(InstancePiece piece, double scale)
    {
        Polygon outline = Polygon.Of(piece.Points.Select(point =>
            new Point((long)Math.Round(point.X * scale), (long)Math.Round(point.Y * scale))));
        return new Piece
        {
            Name = piece.Id,
            Size = "",
            Cut = new CutQuantity(piece.Quantity, CutKind.Copies),
            SeamLine = outline,
            CuttingLine = outline,
            Grainline = new Segment(Point.Origin, new Point(1, 0)),
            FoldEdge = null,
            CenterLine = null,
            Corners = [],
            Edges = [],
            Notches = [],
            Lines = [],
            Marks = [],
            Grain = GrainRule.Any,
            Tilt = null,
        };
    }
}
