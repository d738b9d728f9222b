using System.CommandLine;
using LureSim.Model.Retrieve;
using LureSim.Scenarios;
using LureSim.Scenarios.Keys;
using LureSim.Scenarios.Quantities;
using LureSim.Studies.Cadence;
using LureSim.Studies.Runs;

namespace LureSim.Cli.Commands;

/// <summary>Options of <c>cadence</c> that say how it searches.</summary>
public sealed class CadenceOptions
{
    private const int MostStarts = 1000, MostThreads = 4096, MostTwitches = 10_000;

    private readonly Option<string> from = new("--from")
    {
        Description = "Slowest rhythm.",
        HelpName = "rhythm",
        DefaultValueFactory = _ => "0.6 /s",
    };

    private readonly Option<string> to = new("--to")
    {
        Description = "Fastest rhythm.",
        HelpName = "rhythm",
        DefaultValueFactory = _ => "4 /s",
    };

    private readonly Option<string?> starts = new("--starts")
    {
        Description = "Starts per rhythm, so that luck is not reported as a rule; default 6, in a map 3.",
        HelpName = "count",
    };

    private readonly Option<string> threads = new("--threads")
    {
        Description = "Most threads; 0 uses every core. The result does not depend on it.",
        HelpName = "count",
        DefaultValueFactory = _ => "0",
    };

    private readonly Option<string> warmUp = new("--warm-up")
    {
        Description = "Time before twitches count.",
        HelpName = "time",
        DefaultValueFactory = _ => "18 s",
    };

    private readonly Option<string?> twitches = new("--twitches") { Description = "Twitches counted; default 24.", HelpName = "count" };

    private readonly Option<string?> nodes = new("--nodes") { Description = "Line segments of each run; default 40.", HelpName = "count" };

    private readonly Option<string> step = new("--step")
    {
        Description = "Time step of each run.",
        HelpName = "time",
        DefaultValueFactory = _ => "1 ms",
    };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        ArgumentNullException.ThrowIfNull(command);
        foreach (Option option in (Option[])[from, to, starts, threads, warmUp, twitches, nodes, step])
        {
            command.Add(option);
        }
    }

    /// <summary>The plan, or null after faults.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="defaultStarts">Starts when none are asked for.</param>
    /// <param name="faults">Gets every fault.</param>
    public CadencePlan? Read(ParseResult parsed, int defaultStarts, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        ArgumentNullException.ThrowIfNull(faults);
        int before = faults.Count;
        double slowest = Number(parsed.GetValue(from)!, RetrieveKeys.Cadence, "--from", faults);
        double fastest = Number(parsed.GetValue(to)!, RetrieveKeys.Cadence, "--to", faults);
        int count = Counts.Read(parsed.GetValue(starts), defaultStarts, "--starts", 1, MostStarts, faults);
        int cores = Counts.Read(parsed.GetValue(threads), 0, "--threads", 0, MostThreads, faults);
        if (fastest <= slowest)
        {
            faults.Add(new("--to", "", "the fastest rhythm must lie above the slowest"));
        }

        var run = new StationaryPlan(
            Number(parsed.GetValue(warmUp)!, RetrieveKeys.WarmUp, "--warm-up", faults),
            Counts.Read(parsed.GetValue(twitches), 24, "--twitches", PatternFinder.FewestTwitches, MostTwitches, faults),
            Counts.Read(parsed.GetValue(nodes), 40, "--nodes", (int)SolverKeys.Nodes.Low, (int)SolverKeys.Nodes.High, faults),
            Number(parsed.GetValue(step)!, SolverKeys.Step, "--step", faults));
        return faults.Count > before ? null : new CadencePlan(slowest, fastest, Starts: count, Run: run, Threads: cores);
    }

    private static double Number(string text, KeySpec key, string option, ICollection<ScenarioFault> faults)
    {
        QuantityValue value = Quantity.Read(text, key.Kind);
        string? error = value.Error ?? (value.Si >= key.Low && value.Si <= key.High
            ? null
            : $"\"{text}\" is outside of {Quantity.Show(key.Low, key.Kind, key.Unit)} to {Quantity.Show(key.High, key.Kind, key.Unit)}");
        if (error is not null)
        {
            faults.Add(new(option, "", error));
        }

        return value.Si;
    }
}
