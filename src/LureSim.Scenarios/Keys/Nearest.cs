namespace LureSim.Scenarios.Keys;

/// <summary>The nearest known word by edit distance (insert, delete, replace, swap neighbours).</summary>
public static class Nearest
{
    /// <summary>The nearest, or null when nothing is near: one slip in a word of up to five letters, two in up to nine, else three.</summary>
    /// <param name="word">As written.</param>
    /// <param name="known">Known words.</param>
    public static string? Of(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(known);
        string? best = null;
        int least = int.MaxValue;
        foreach (string candidate in known)
        {
            // Each letter too many or too few is a slip: no need to look closer.
            int slips = MostSlips(Math.Max(word.Length, candidate.Length));
            int distance = Math.Abs(word.Length - candidate.Length) > slips ? int.MaxValue : Distance(word, candidate);
            if (distance <= slips && (distance < least || (distance == least && Common(word, candidate) > Common(word, best!))))
            {
                (best, least) = (candidate, distance);
            }
        }

        return best;
    }

    // Of two as near as each other the one that begins like the word: slips come late in it.
    private static int Common(string a, string b) => a.Zip(b).TakeWhile(p => p.First == p.Second).Count();

    private static int MostSlips(int letters) => letters < 3 ? 0 : letters <= 5 ? 1 : letters <= 9 ? 2 : 3;

    /// <summary>Optimal string alignment distance.</summary>
    /// <param name="a">A word.</param>
    /// <param name="b">Another.</param>
    public static int Distance(string a, string b)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(b);
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
