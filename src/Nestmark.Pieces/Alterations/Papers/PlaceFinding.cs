using Nestmark.Pieces.Making;

namespace Nestmark.Pieces.Alterations.Papers;

/// <summary>Finds named places on a piece.</summary>
internal static class PlaceFinding
{
    /// <summary>The place; or the fault that it is not there.</summary>
    public static (Vector Place, AlterationFault? Fault) Find(Paper paper, AlterPlace place)
    {
        if (place.Edge.Length > 0)
            return OnEdge(paper, place);
        Vector? found = paper.Corner(place.Name)
            ?? paper.Marks.FirstOrDefault(mark => mark.Label == place.Name)?.Place
            ?? Notch(paper, place.Name);
        return found is { } at ? (at, null) : (default, AlterationFaults.NoSuchPlace(place.Name, paper.Letters));
    }

    private static Vector? Notch(Paper paper, string name)
    {
        foreach (PaperPoint point in paper.Edges.SelectMany(edge => edge.Points))
        {
            if (point.Notches.Contains(name))
                return point.Place;
        }
        return null;
    }

    private static (Vector Place, AlterationFault? Fault) OnEdge(Paper paper, AlterPlace place)
    {
        int index = paper.IndexOf(place.Edge);
        if (index < 0)
            return (default, AlterationFaults.NoSuchEdge(place.Edge, paper.EdgeNames));
        PaperEdge edge = paper.Edges[index];
        double whole = edge.LengthMicrometers;
        double along = place.Along is { } distance ? distance.Micrometers : place.ShareRatio * whole;
        if (along > whole + 1)
            return (default, AlterationFaults.BeyondEdge(edge.Name));
        return (edge.PlaceAt(edge.Name == place.Edge ? along : whole - along), null);
    }
}
