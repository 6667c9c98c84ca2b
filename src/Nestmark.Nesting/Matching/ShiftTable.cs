namespace Nestmark.Nesting.Matching;

/// <summary>Pieces joined by rules, each with its shift against the others of its group, modulo a repeat.</summary>
internal sealed class ShiftTable(long repeat)
{
    private readonly Dictionary<string, (string Parent, long Shift)> _nodes = [];

    /// <summary>The group of a node and its shift within.</summary>
    public (string Root, long Shift) Find(string node)
    {
        if (!_nodes.TryGetValue(node, out (string Parent, long Shift) found))
            return (node, 0);
        (string root, long shift) = Find(found.Parent);
        return (root, Cloths.LayPrint.Modulo(shift + found.Shift, repeat));
    }

    /// <summary>Says that the shift of one node is that of another and some more; returns by how much that misses what is known already.</summary>
    public long Join(string node, string other, long more)
    {
        (string root, long shift) = Find(node);
        (string otherRoot, long otherShift) = Find(other);
        long difference = otherShift + more - shift;
        if (root == otherRoot)
            return Miss(difference, repeat);
        _nodes[root] = (otherRoot, difference);
        return 0;
    }

    /// <summary>Distance of a value from the nearest whole multiple of a period.</summary>
    public static long Miss(long value, long period)
    {
        long rest = ((value % period) + period) % period;
        return Math.Min(rest, period - rest);
    }
}
