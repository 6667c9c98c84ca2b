using Nestmark.Geometry;
using Nestmark.Nesting;

namespace Nestmark.Bench.Garments;

/// <summary>How many others a piece can meet on a marker: those whose bounds meet its own, which is as far as a search must look.</summary>
/// <param name="AnywhereCount">Mean over even places on the whole lay.</param>
/// <param name="HereCount">Mean over the places where the pieces lie.</param>
/// <param name="LineCount">Mean over lines through these places, along and across, as long as the piece is large.</param>
internal readonly record struct Reach(double AnywhereCount, double HereCount, double LineCount)
{
    private const int PlacesEachWay = 20;

    public static Reach Of(Marker marker)
    {
        Box[] rooms = [.. marker.Placements.Select(placement => placement.CuttingLine.Bounds)];
        Box lay = rooms.Aggregate((first, second) => first.Including(second));
        int[] items = [.. Enumerable.Range(0, rooms.Length)];
        return new Reach(
            items.Average(item => PlacesOf(rooms[item], lay).Average(place => Met(rooms, item, place))),
            items.Average(item => Met(rooms, item, rooms[item])),
            items.Average(item => (Met(rooms, item, Swept(rooms[item], 1, 0)) + Met(rooms, item, Swept(rooms[item], 0, 1))) / 2.0));
    }

    private static int Met(Box[] rooms, int item, Box place)
    {
        int met = 0;
        for (int other = 0; other < rooms.Length; other++)
        {
            if (other != item && place.InteriorMeets(rooms[other]))
                met++;
        }
        return met;
    }

    private static IEnumerable<Box> PlacesOf(Box room, Box lay)
    {
        for (int i = 0; i < PlacesEachWay; i++)
        {
            for (int j = 0; j < PlacesEachWay; j++)
                yield return room.Shifted(new Point(Place(lay.MinX - room.MinX, lay.MaxX - room.MaxX, i), Place(lay.MinY - room.MinY, lay.MaxY - room.MaxY, j)));
        }
    }

    private static long Place(long low, long high, int number) => low + (high - low) * (2 * number + 1) / (2 * PlacesEachWay);

    /// <summary>What a piece passes over when it moves by half its size to both sides.</summary>
    private static Box Swept(Box room, int alongX, int alongY)
    {
        long half = (long)Math.Sqrt((double)room.Width * room.Height) / 2;
        return room.Shifted(new Point(-half * alongX, -half * alongY)).Including(room.Shifted(new Point(half * alongX, half * alongY)));
    }
}
