using System.CommandLine;
using LureSim.Cli.Sweeps;
using LureSim.Scenarios;
using LureSim.Scenarios.Variation;
using LureSim.Studies.Batches;
using LureSim.Studies.Doubt;
using LureSim.Studies.Figures;
using LureSim.Studies.Sweep;

namespace LureSim.Cli.Commands;

/// <summary>Options of <c>sweep</c>.</summary>
public sealed class SweepOptions
{
    private const int MostThreads = 4096;

    private readonly Option<string[]> _vary = new("--vary")
    {
        Description = "Vary a key: KEY=a,b,c or KEY=from:to:step or KEY=from:to:count; repeatable, all combinations are run.",
        HelpName = "key=values",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<string?> _sample = new("--sample")
    {
        Description = "Draw so many combinations (Latin hypercube) instead of all; ranges may be KEY=from:to.",
        HelpName = "count",
    };

    private readonly Option<string?> _doubt = new("--doubt")
    {
        Description = "Run every combination so many times with every guess drawn from its range.",
        HelpName = "count",
    };

    private readonly Option<string> _command = new("--command")
    {
        Description = "Whose summary to tabulate: " + string.Join(", ", Capabilities.Summaries.Select(s => s.Name)) + ".",
        HelpName = "name",
        DefaultValueFactory = _ => Capabilities.Summaries[0].Name,
    };

    private readonly Option<string> _threads = new("--threads")
    {
        Description = "Most threads; 0 uses every core. The result does not depend on it.",
        HelpName = "count",
        DefaultValueFactory = _ => "0",
    };

    private readonly ResumeOptions _resume = new("sweep");

    private readonly Option<string?> _shard = new("--shard")
    {
        Description = "Run part i of n only, for a job array; sweep merge joins the parts.",
        HelpName = "i/n",
    };

    /// <summary>Adds all to a command.</summary>
    /// <param name="to">Command.</param>
    public void AddTo(Command to)
    {
        ArgumentNullException.ThrowIfNull(to);
        _command.AcceptOnlyFromAmong([.. Capabilities.Summaries.Select(s => s.Name)]);
        foreach (Option option in (Option[])[_vary, _sample, _doubt, _command, _threads, _resume.Resume, _resume.Mix, _shard])
        {
            to.Add(option);
        }
    }

    /// <summary>The values given; faults are told.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public SweepValues Read(ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        ArgumentNullException.ThrowIfNull(faults);
        IReadOnlyList<Axis> axes = AxisReader.ReadAll(parsed.GetValue(_vary) ?? [], "--vary", faults);
        int samples = Counts.Read(parsed.GetValue(_sample), 0, "--sample", 1, SweepPlan.MostRuns, faults);
        int guesses = Counts.Read(parsed.GetValue(_doubt), 0, "--doubt", DoubtAnalysis.FewestRuns, SweepPlan.MostRuns, faults);
        int cores = Counts.Read(parsed.GetValue(_threads), 0, "--threads", 0, MostThreads, faults);
        Shard? part = parsed.GetValue(_shard) is string text ? Shard.Parse(text) : Shard.Whole;
        if (part is null)
        {
            faults.Add(new("--shard", "", $"\"{parsed.GetValue(_shard)}\" is no part; i/n is due with i from 1 to n, for example 2/8"));
        }

        CheckAxes(axes, samples, guesses, faults);
        return new(
            axes, samples, guesses, Capabilities.Summaries.First(f => f.Name == parsed.GetValue(_command)), Batch.Cores(cores),
            _resume.Read(parsed), part ?? Shard.Whole);
    }

    private static void CheckAxes(IReadOnlyList<Axis> axes, int samples, int guesses, ICollection<ScenarioFault> faults)
    {
        if (axes.Count == 0 && faults.Count == 0 && (guesses == 0 || samples > 0))
        {
            faults.Add(new("--vary", "", "nothing varies; give at least one --vary KEY=..., or --doubt"));
        }

        double runs = Math.Max(samples, 1) * (double)Math.Max(guesses, 1);
        foreach (Axis axis in axes)
        {
            if (samples == 0 && axis.Values.Count == 0)
            {
                faults.Add(new("--vary", axis.Name, "a range needs a step or a count, or --sample"));
            }
            else if (samples > 0 && axis.IsRange && axis.Values.Count > 0)
            {
                faults.Add(new("--vary", axis.Name, "with --sample a range is from:to, without step or count"));
            }

            runs *= samples == 0 ? axis.Values.Count : 1.0;
        }

        if (runs > SweepPlan.MostRuns)
        {
            faults.Add(new("--vary", "", FormattableString.Invariant($"{runs:F0} runs are too many; at most {SweepPlan.MostRuns}")));
        }
    }
}

/// <summary>Values of <see cref="SweepOptions"/>.</summary>
/// <param name="Axes">What varies.</param>
/// <param name="Samples">Samples of it; 0 for the grid.</param>
/// <param name="Doubt">Samples of the guesses; 0 for none.</param>
/// <param name="Figures">What to run.</param>
/// <param name="Threads">Threads, at least 1.</param>
/// <param name="Resume">Whether to go on with what is there.</param>
/// <param name="Shard">Part to run.</param>
public sealed record SweepValues(
    IReadOnlyList<Axis> Axes, int Samples, int Doubt, IFigureSource Figures, int Threads, ResumeValues Resume, Shard Shard);
