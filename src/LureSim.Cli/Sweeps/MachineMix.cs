using LureSim.Reports.Sweep;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Sweeps;

/// <summary>The rule for rows of different kinds of machines: refused, or with <c>--mix-machines</c> taken and said.</summary>
internal static class MachineMix
{
    /// <summary>Refuses journals whose rows come from more than one kind of machine.</summary>
    /// <param name="parts">Journals of one sweep.</param>
    /// <param name="here">The machine that goes on, or null when only a table is made.</param>
    /// <param name="allowed">True with <c>--mix-machines</c>.</param>
    /// <param name="terminal">Told when they are taken.</param>
    /// <exception cref="SweepException">More than one kind, and not allowed.</exception>
    public static void Refuse(IReadOnlyList<Journal> parts, string? here, bool allowed, Terminal terminal)
    {
        string[] kinds = [.. parts.SelectMany(p => p.Machines).Append(here).OfType<string>().Distinct()];
        if (kinds.Length < 2)
        {
            return;
        }

        string told = $"rows come from {kinds.Length} kinds of machines, whose last digits may differ: {string.Join(" | ", kinds)}";
        if (!allowed)
        {
            throw new SweepException($"{told}; --mix-machines takes them all the same");
        }

        terminal.Error.WriteLine("note: " + told);
    }
}
