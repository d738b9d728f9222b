using System.Globalization;
using System.Text;
using LureSim.Reports.Kit.Text;
using LureSim.Scenarios.Effective;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Scenarios.Starting;
using LureSim.Studies.Start;

namespace LureSim.Reports.Start;

/// <summary>A scenario that was written, for the terminal.</summary>
public static class StartText
{
    private const int PerRow = 2;

    /// <summary>What was written, how the lure floats, what was guessed, what to type next; each line ended by a line feed.</summary>
    /// <param name="file">Name of the file.</param>
    /// <param name="start">What was written.</param>
    public static string Build(string file, StartResult start)
    {
        ArgumentNullException.ThrowIfNull(start);
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"Wrote {file}: {start.Plan.Title}\n\n");
        double under = start.Trim.Rest.DisplacedVolumeM3 / start.Trim.Rest.HullVolumeM3;
        text.AppendWrapped($"The lure should rest {StartStudy.Angle(start.Trim.Rest.TrimRad)} in still water, {Trade.Fixed(100.0 * under, 0)} % of its body under water.");
        foreach (string remark in start.Remarks)
        {
            text.AppendWrapped("Note: " + remark);
        }

        text.Append("\nGuessed, because you did not say it; change it in the file where you know better:\n");
        text.Append(AlignedTable.Text(Guessed(start.Plan.Guesses)));
        if (PowerRange(start) is string power)
        {
            text.Append('\n').AppendWrapped(power);
        }

        text.Append("\nNext:\n");
        foreach (string command in Next(file, start))
        {
            text.Append("  ").Append(command).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The commands to type next.</summary>
    /// <param name="file">Name of the file.</param>
    /// <param name="start">What was written.</param>
    public static IReadOnlyList<string> Next(string file, StartResult start)
    {
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(file);
        string shown = file.Contains(' ', StringComparison.Ordinal) ? $"\"{file}\"" : file;
        return [$"luresim retrieve {shown}", $"luresim cast {shown}", $"luresim compare {shown} --rods \"{Rods(start)}\""];
    }

    // What has one reason in one table is one row; a row that would be too wide goes on in the next.
    private static IEnumerable<TableRow> Guessed(IEnumerable<StartGuess> guesses)
    {
        foreach (IGrouping<(string Table, string Why), StartGuess> group in guesses.GroupBy(g => (g.Key.Split('.')[0], g.Why)))
        {
            string[] values = [.. group.Select(g => $"{g.Key.Split('.')[1].Replace('_', ' ')} {g.Value}")];
            for (int i = 0; i < values.Length; i += PerRow)
            {
                yield return new(i == 0 ? group.Key.Table : "", string.Join(", ", values.Skip(i).Take(PerRow)), i == 0 ? group.Key.Why : "");
            }
        }
    }

    // Six inches shorter and four longer: what hangs beside it in a shop.
    private static string Rods(StartResult start)
    {
        double length = start.Scenario.Values.Number(RodKeys.Length);
        string text = start.Scenario.Values.Text(RodKeys.Length);
        bool metric = text.EndsWith('m') || text.EndsWith("cm", StringComparison.Ordinal);
        double[] steps = metric ? [-0.15, 0.0, 0.10] : [-6.0 * 0.0254, 0.0, 4.0 * 0.0254];
        return string.Join(',', steps.Select(s => metric ? Quantity.Show(length + s, QuantityKind.Length, "m", 3) : FeetInches(length + s)));
    }

    private static string FeetInches(double m)
    {
        int inches = (int)Math.Round(m / UnitTable.InchM);
        return inches % 12 == 0 ? $"{inches / 12} ft" : $"{inches / 12} ft {inches % 12} in";
    }

    private static string? PowerRange(StartResult start) => start.Scenario.Effective().Guesses.FirstOrDefault(g => g.Key == RodKeys.BendLoad) is GuessedKey power
        ? $"\"{start.Scenario.Values.Text(RodKeys.Power)}\" means something else at every maker; here {Shown.For(start.Scenario.Units).Range(ShownQuantity.Pull, power.Low, power.High)} "
            + "hung at the tip bends such a rod by a third of its length. A bend test of your rod (luresim bend) narrows that."
        : null;
}
