using LureSim.Cli.Commands;
using LureSim.Scenarios;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Sweeps;

/// <summary>The scenario that a sweep starts from.</summary>
internal static class SweepStart
{
    /// <summary>The scenario as it is or, where it lacks a key that the sweep gives, the one of the first point. Has errors when
    /// neither is valid.</summary>
    /// <param name="source">File.</param>
    /// <param name="overrides">Overrides of every run.</param>
    /// <param name="wanted">What varies.</param>
    public static ScenarioResult Find(ScenarioSource source, IReadOnlyList<string> overrides, SweepValues wanted)
    {
        ScenarioResult plain = source.Resolve(overrides);
        if (plain.IsValid)
        {
            return plain;
        }

        IEnumerable<string> first = Points(wanted, 1).At(0).SelectMany(v => v.Overrides);
        ScenarioResult given = source.Resolve([.. overrides, .. first]);
        return given.IsValid ? given : plain;
    }

    /// <summary>The points of a sweep.</summary>
    /// <param name="wanted">What varies.</param>
    /// <param name="seed">Seed of the scenario.</param>
    public static SweepPoints Points(SweepValues wanted, ulong seed) => wanted.Samples > 0
        ? SweepPoints.OfSamples(wanted.Axes, wanted.Samples, seed)
        : SweepPoints.OfGrid(wanted.Axes);
}
