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

    private readonly Option<string> _from = new("--from")
    {
        Description = "Slowest rhythm.",
        HelpName = "rhythm",
        DefaultValueFactory = _ => "0.6 /s",
    };

    private readonly Option<string> _to = new("--to")
    {
        Description = "Fastest rhythm.",
        HelpName = "rhythm",
        DefaultValueFactory = _ => "4 /s",
    };

    private readonly Option<string?> _starts = new("--starts")
    {
        Description = "Most starts per rhythm, so that luck is not reported as a rule; default 6, in a map 3. As many are run as decide.",
        HelpName = "count",
    };

    private readonly Option<string> _threads = new("--threads")
    {
        Description = "Most threads; 0 uses every core. The result does not depend on it.",
        HelpName = "count",
        DefaultValueFactory = _ => "0",
    };

    private readonly Option<string> _warmUp = new("--warm-up")
    {
        Description = "Time before twitches count in a run that does not settle before.",
        HelpName = "time",
        DefaultValueFactory = _ => "10 s",
    };

    private readonly Option<string?> _twitches = new("--twitches") { Description = "Twitches counted in such a run; default 24.", HelpName = "count" };

    private readonly Option<string?> _nodes = new("--nodes") { Description = "Line segments of each run; default 40.", HelpName = "count" };

    private readonly Option<string> _step = new("--step")
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
        foreach (Option option in (Option[])[_from, _to, _starts, _threads, _warmUp, _twitches, _nodes, _step])
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
        double slowest = Number(parsed.GetValue(_from)!, RetrieveKeys.Cadence, "--from", faults);
        double fastest = Number(parsed.GetValue(_to)!, RetrieveKeys.Cadence, "--to", faults);
        int count = Counts.Read(parsed.GetValue(_starts), defaultStarts, "--starts", 1, MostStarts, faults);
        int cores = Counts.Read(parsed.GetValue(_threads), 0, "--threads", 0, MostThreads, faults);
        if (fastest <= slowest)
        {
            faults.Add(new("--to", "", "the fastest rhythm must lie above the slowest"));
        }

        var run = new StationaryPlan(
            Number(parsed.GetValue(_warmUp)!, RetrieveKeys.WarmUp, "--warm-up", faults),
            Counts.Read(parsed.GetValue(_twitches), 24, "--twitches", PatternFinder.FewestTwitches, MostTwitches, faults),
            Counts.Read(parsed.GetValue(_nodes), 40, "--nodes", (int)SolverKeys.Nodes.Low, (int)SolverKeys.Nodes.High, faults),
            Number(parsed.GetValue(_step)!, SolverKeys.Step, "--step", faults));
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
