using System.Globalization;
using LureSim.Studies.Batches;
using LureSim.Studies.Doubt;
using LureSim.Studies.Sweep;

namespace LureSim.Reports.Sweep;

/// <summary>First line of a journal: which sweep, which part of it.</summary>
/// <param name="Fingerprint">Stands for command, effective scenario, what varies and the program's version.</param>
/// <param name="Command">Command whose summary is tabulated.</param>
/// <param name="Count">Runs of the whole sweep.</param>
/// <param name="Shard">Part that the journal holds.</param>
/// <param name="Layout">Columns.</param>
public sealed record JournalHeader(string Fingerprint, string Command, int Count, Shard Shard, SweepLayout Layout)
{
    private const string Format = "luresim-sweep-2";

    /// <summary>The text of the line; two headers with the same text are of the same part of the same sweep.</summary>
    public string Text => string.Create(
        CultureInfo.InvariantCulture, $"{Format}\t{Fingerprint}\t{Command}\t{Count}\t{Shard}\t{Layout.Counts}\t{Layout.Header}");

    /// <summary>Reads the text; null when it is no header that this program could have written.</summary>
    internal static JournalHeader? Parse(string text)
    {
        string[] parts = text.Split('\t');
        if (parts.Length != 7 || parts[0] != Format || !parts[2].All(char.IsAsciiLetterLower)
            || !int.TryParse(parts[3], NumberStyles.None, CultureInfo.InvariantCulture, out int count) || count is < 1 or > SweepPlan.MostRuns)
        {
            return null;
        }

        return Shard.Parse(parts[4]) is Shard shard && SweepLayout.TryParse(parts[5], parts[6]) is SweepLayout layout && Divides(layout, count)
            ? new(parts[1], parts[2], count, shard, layout)
            : null;
    }

    private static bool Divides(SweepLayout layout, int count) =>
        count % layout.Samples == 0 && (layout.HasDoubt ? layout.Samples >= DoubtAnalysis.FewestRuns : layout.Samples == 1);
}
