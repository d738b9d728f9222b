using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Parts;
using LureSim.Scenarios.Quantities;

namespace LureSim.Scenarios.Starting;

/// <summary>What a phrase said.</summary>
/// <param name="Texts">Texts by key, words in the spelling of files.</param>
/// <param name="Part">The part that was named, or null.</param>
/// <param name="Fault">What was not understood, a sentence, or null.</param>
internal sealed record Phrase(IReadOnlyDictionary<KeySpec, string> Texts, Part? Part, string? Fault)
{
    /// <summary>Nothing said.</summary>
    public static Phrase Nothing { get; } = new(new Dictionary<KeySpec, string>(), null, null);

    /// <summary>True where nothing was said.</summary>
    public bool IsEmpty => Texts.Count == 0 && Part is null;
}

/// <summary>
/// Reads a few words, "7 ft medium-heavy fast", by cutting them into values of keys: the cut that leaves the fewest words over, then the
/// fewest pieces. What a piece may be, the readers of the keys say.
/// </summary>
/// <param name="folder">Folder of parts that may be named, or null.</param>
/// <param name="example">A phrase that it reads, for messages.</param>
/// <param name="slots">Keys that may be given, each once; of two that fit, the first is taken.</param>
internal sealed class PhraseReader(string? folder, string example, params KeySpec[] slots)
{
    private const int MostWords = 16, LongestPiece = 5;
    private const int OverCost = 1000, FillerCost = 2, PieceCost = 3, PartCost = 10;

    // Words that say nothing between the others.
    private static readonly string[] Fillers = ["of", "a", "an", "the", "and", "with", "rod", "reel", "line", "leader", "lure", "action", "power", "long", "test"];

    private readonly List<(int Start, int Length, KeySpec? Key, Part? Part)> _pieces = [];

    /// <summary>Reads a phrase.</summary>
    /// <param name="text">As typed.</param>
    public Phrase Read(string text)
    {
        string[] words = text.Split([' ', ',', ';', '\t'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Length > MostWords)
        {
            return Phrase.Nothing with { Fault = $"more than {MostWords} words" };
        }

        FindPieces(words);
        var texts = new Dictionary<KeySpec, string>();
        var over = new List<string>();
        Part? part = null;
        var memo = new Dictionary<(int At, int Used), (int Cost, int Piece)>();
        for ((int at, int used) = (0, 0); at < words.Length;)
        {
            int choice = Best(words, at, used, memo).Piece;
            if (choice < 0)
            {
                Leave(words[at++], over);
                continue;
            }

            (int start, int length, KeySpec? key, Part? named) = _pieces[choice];
            part = named ?? part;
            if (key is not null)
            {
                texts[key] = InFile(key, string.Join(' ', words.AsSpan(start, length)));
            }

            used |= Bit(choice);
            at += length;
        }

        return new(texts, part, over.Count == 0 ? null : Explain(string.Join(' ', over)));
    }

    private static void Leave(string word, List<string> over)
    {
        if (!Fillers.Contains(word, StringComparer.OrdinalIgnoreCase))
        {
            over.Add(word);
        }
    }

    private void FindPieces(string[] words)
    {
        _pieces.Clear();
        for (int start = 0; start < words.Length; start++)
        {
            for (int length = 1; length <= Math.Min(LongestPiece, words.Length - start); length++)
            {
                ReadOnlySpan<string> run = words.AsSpan(start, length);
                if (folder is not null && NamedPart(string.Join('-', run)) is Part part)
                {
                    _pieces.Add((start, length, null, part));
                }

                string text = string.Join(' ', run);
                _pieces.AddRange(slots.Where(k => ValueReader.Reads(k, text)).Select(k => (start, length, (KeySpec?)k, (Part?)null)));
            }
        }
    }

    // Least cost of the words from a place on, with the keys that are given already.
    private (int Cost, int Piece) Best(string[] words, int at, int used, Dictionary<(int At, int Used), (int Cost, int Piece)> memo)
    {
        if (at == words.Length)
        {
            return (0, -1);
        }

        if (memo.TryGetValue((at, used), out (int Cost, int Piece) known))
        {
            return known;
        }

        bool filler = Fillers.Contains(words[at], StringComparer.OrdinalIgnoreCase);
        (int Cost, int Piece) best = ((filler ? FillerCost : OverCost) + Best(words, at + 1, used, memo).Cost, -1);
        for (int i = 0; i < _pieces.Count; i++)
        {
            if (_pieces[i].Start == at && (used & Bit(i)) == 0)
            {
                // Where words say the same as the name of a part, the words count: they leave the rest open.
                int cost = (_pieces[i].Part is null ? PieceCost : PartCost) + Best(words, at + _pieces[i].Length, used | Bit(i), memo).Cost;
                best = cost < best.Cost ? (cost, i) : best;
            }
        }

        memo.Add((at, used), best);
        return best;
    }

    private int Bit(int piece) => 1 << (_pieces[piece].Key is KeySpec key ? Array.IndexOf(slots, key) : slots.Length);

    private static string InFile(KeySpec key, string text)
    {
        QuantityValue value = ValueReader.ReadText(key, text);
        return value.Kind == QuantityKind.Choice ? key.Choices.First(c => c.Value == value.Si).Name : text;
    }

    private Part? NamedPart(string name) => PartLibrary.In(folder!).FirstOrDefault(p => string.Equals(p.Name, name, StringComparison.OrdinalIgnoreCase));

    // The one reading that is nearest: a value out of its range says more than a list of words.
    private string Explain(string over)
    {
        string say = $"say it like \"{example}\"{(folder is null ? "" : $"; luresim list {folder} shows the words")}";
        foreach (KeySpec key in slots)
        {
            if (key.NoNumber is string why && NumberReader.Take(over, out _, out _) is null)
            {
                return $"\"{over}\": {why}; {say}";
            }

            QuantityValue value = ValueReader.ReadText(key, over);
            if (double.IsFinite(value.Si))
            {
                return value.Error is null ? $"\"{over}\" is one {key.Words} too many; {say}" : $"{key.Words}: {value.Error}";
            }
        }

        string[] known = [.. slots.SelectMany(k => k.Choices).Select(c => c.Name), .. PartNames()];
        string near = Nearest.Of(over.ToLowerInvariant(), known) is string name ? $"nearest: {name}; " : "";
        return $"\"{over}\" is not understood; {near}{say}";
    }

    private IEnumerable<string> PartNames() => folder is null ? [] : PartLibrary.In(folder).Select(p => p.Name);
}
