namespace Nestmark.Input;

/// <summary>Finds the word that was probably meant.</summary>
internal static class Spelling
{
    /// <summary>The first of the nearest candidates, when no more than a third of the word (and one letter) differs; or <c>null</c>.</summary>
    public static string? Nearest(string word, IEnumerable<string> candidates)
    {
        if (word.Length > 40)
            return null;
        string? nearest = null;
        int least = word.Length / 3 + 2;
        foreach (string candidate in candidates)
        {
            int distance = candidate.Length > 60 ? least : Distance(word.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < least)
                (nearest, least) = (candidate, distance);
        }
        return nearest;
    }

    /// <summary>"Did you mean …?" with the nearest candidate, or the list of all.</summary>
    public static string Suggest(string word, IReadOnlyCollection<string> candidates)
    {
        if (Nearest(word, candidates) is string nearest)
            return $"Did you mean {nearest}?";
        return candidates.Count == 0 ? "There are none." : $"There are: {ListOf(candidates)}.";
    }

    /// <summary>Up to twelve words with commas between them.</summary>
    public static string ListOf(IReadOnlyCollection<string> words)
    {
        string list = string.Join(", ", words.Take(12));
        return words.Count > 12 ? list + ", …" : list;
    }

    /// <summary>Letters to add, leave out, change or swap with their neighbor (optimal string alignment distance).</summary>
    private static int Distance(string left, string right)
    {
        int[,] cost = new int[left.Length + 1, right.Length + 1];
        for (int i = 0; i <= left.Length; i++)
            cost[i, 0] = i;
        for (int j = 0; j <= right.Length; j++)
            cost[0, j] = j;
        for (int i = 1; i <= left.Length; i++)
        {
            for (int j = 1; j <= right.Length; j++)
            {
                int change = cost[i - 1, j - 1] + (left[i - 1] == right[j - 1] ? 0 : 1);
                cost[i, j] = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                    cost[i, j] = Math.Min(cost[i, j], cost[i - 2, j - 2] + 1);
            }
        }
        return cost[left.Length, right.Length];
    }
}
