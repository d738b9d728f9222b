using System.Globalization;

namespace LureSim.Studies.Batches;

/// <summary>One of several parts of a list: every n-th index, so that parts take about the same time.</summary>
/// <param name="Number">i, from 1.</param>
/// <param name="Of">n, the number of parts.</param>
public readonly record struct Shard(int Number, int Of)
{
    /// <summary>Most parts.</summary>
    public const int Most = 1_000_000;

    /// <summary>The whole list.</summary>
    public static Shard Whole { get; } = new(1, 1);

    /// <summary>True for the whole list.</summary>
    public bool IsWhole => Of == 1;

    /// <summary>Reads <c>i/n</c>; null when it is no part of anything.</summary>
    /// <param name="text">For example <c>2/8</c>.</param>
    public static Shard? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] parts = text.Split('/');
        bool read = parts.Length == 2 & int.TryParse(parts[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number)
            & int.TryParse(parts[^1], NumberStyles.None, CultureInfo.InvariantCulture, out int of);
        return read && number >= 1 && number <= of && of <= Most ? new(number, of) : null;
    }

    /// <summary>Whether an index belongs to this part.</summary>
    /// <param name="index">Index in the whole list.</param>
    public bool Has(int index) => index % Of == Number - 1;

    /// <summary>Number of indices in this part of a list.</summary>
    /// <param name="count">Length of the whole list.</param>
    public int CountOf(int count) => ((count - Number) / Of) + (count >= Number ? 1 : 0);

    /// <summary>As <see cref="Parse"/> reads it.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Number}/{Of}");
}
