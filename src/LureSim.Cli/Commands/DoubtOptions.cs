using System.CommandLine;
using LureSim.Scenarios;
using LureSim.Studies.Batches;
using LureSim.Studies.Doubt;

namespace LureSim.Cli.Commands;

/// <summary>Options of a study of doubt beside a single run.</summary>
public sealed class DoubtOptions
{
    private const int MostRuns = 1_000_000, MostThreads = 4096;

    /// <summary>Runs of the study.</summary>
    public Option<string?> Runs { get; } = new("--doubt")
    {
        Description = "Run it so many times more, every guess drawn from its range: bands, and which guess matters.",
        HelpName = "count",
    };

    private readonly Option<string> _threads = new("--threads")
    {
        Description = "Most threads of --doubt; 0 uses every core. The result does not depend on it.",
        HelpName = "count",
        DefaultValueFactory = _ => "0",
    };

    /// <summary>Adds all to a command.</summary>
    /// <param name="command">Command.</param>
    public void AddTo(Command command)
    {
        AddRunsTo(command);
        command.Add(_threads);
    }

    /// <summary>Adds all but the threads, to a command that has its own.</summary>
    /// <param name="command">Command.</param>
    public void AddRunsTo(Command command)
    {
        ArgumentNullException.ThrowIfNull(command);
        command.Add(Runs);
    }

    /// <summary>Runs wanted, 0 for no study, and threads, at least 1.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public (int Runs, int Threads) Read(ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        ArgumentNullException.ThrowIfNull(faults);
        int cores = Counts.Read(parsed.GetValue(_threads), 0, "--threads", 0, MostThreads, faults);
        return (ReadRuns(parsed, faults), Batch.Cores(cores));
    }

    /// <summary>Runs wanted, 0 for no study.</summary>
    /// <param name="parsed">Parsed arguments.</param>
    /// <param name="faults">Gets every fault.</param>
    public int ReadRuns(ParseResult parsed, ICollection<ScenarioFault> faults)
    {
        ArgumentNullException.ThrowIfNull(parsed);
        return Counts.Read(parsed.GetValue(Runs), 0, "--doubt", DoubtAnalysis.FewestRuns, MostRuns, faults);
    }
}
