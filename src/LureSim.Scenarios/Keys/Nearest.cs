namespace LureSim.Scenarios.Keys;

/// <summary>The nearest known word by edit distance (insert, delete, replace, swap neighbours).</summary>
internal static class Nearest
{
    /// <summary>The nearest, or null when nothing is near (more than half of the letters differ).</summary>
    public static string? Of(string word, IEnumerable<string> known)
    {
        string? best = null;
        int least = int.MaxValue;
        foreach (string candidate in known)
        {
            int distance = Distance(word, candidate);
            if (distance < least && 2 * distance <= Math.Max(word.Length, candidate.Length))
            {
                (best, least) = (candidate, distance);
            }
        }

        return best;
    }

    /// <summary>Optimal string alignment distance.</summary>
    public static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            d[i, 0] = i;
        }

        for (int j = 0; j <= b.Length; j++)
        {
            d[0, j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int replace = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(replace, 1 + Math.Min(d[i - 1, j], d[i, j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
                }
            }
        }

        return d[a.Length, b.Length];
    }
}
