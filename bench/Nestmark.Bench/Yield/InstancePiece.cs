using System.Text.Json;

namespace Nestmark.Bench.Yield;

/// <summary>A piece of an instance, in the instance's units.</summary>
internal sealed record InstancePiece(string Id, int Quantity, IReadOnlyList<double> Rotations, IReadOnlyList<(double X, double Y)> Points)
{
    public double Area => AreaOf(Points);

    public static double AreaOf(IReadOnlyList<(double X, double Y)> points)
    {
        double sum = 0;
        for (int i = 0; i < points.Count; i++)
        {
            (double x, double y) = points[i];
            (double nextX, double nextY) = points[(i + 1) % points.Count];
            sum += x * nextY - nextX * y;
        }
        return Math.Abs(sum) / 2;
    }

    public static InstancePiece Read(JsonElement piece) => new(
        piece.GetProperty("id").ToString(),
        piece.TryGetProperty("quantity", out JsonElement quantity) ? quantity.GetInt32() : 1,
        piece.TryGetProperty("rotations", out JsonElement rotations) && rotations.GetArrayLength() > 0
            ? [.. rotations.EnumerateArray().Select(rotation => rotation.GetDouble())]
            : [0.0],
        ReadPoints(piece));

    public static (double X, double Y)[] ReadPoints(JsonElement piece) =>
        [.. piece.GetProperty("points").EnumerateArray().Select(point => (point[0].GetDouble(), point[1].GetDouble()))];
}
