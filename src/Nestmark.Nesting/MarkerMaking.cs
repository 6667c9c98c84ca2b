namespace Nestmark.Nesting;

/// <summary>The one door to the search: a pure function of its arguments.</summary>
public static class MarkerMaking
{
    /// <summary>Lays everything the task asks for, as short as the settings allow; verified exactly.</summary>
    /// <remarks>Even when cancelled at once the marker is complete: the greedy pass always ends.</remarks>
    public static Marker Make(LayTask task, SearchSettings settings) => throw new NotImplementedException(task.ToString() + settings);
}
